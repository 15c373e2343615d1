import type { VoiceRows } from '../../../machines/ear-port.ts';
import { makePassingRows } from '../row-store.ts';
import { makeVoiceStore } from './voice-store.ts';

/** @param earnest false in a rehearsal: a voice that is learned there passes with the page */
export const openVoiceRows = (earnest: boolean): VoiceRows =>
  earnest ? makeVoiceStore() : makePassingRows();
