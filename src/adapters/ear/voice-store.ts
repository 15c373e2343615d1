import type { VoiceRows } from '../../../machines/ear-port.ts';
import type { Stop } from '../../../machines/ports.ts';
import { makeRowStore } from '../row-store.ts';

/** Known voices on the disk: IndexedDB database `name`-voices, so that all of it goes at once. */
export const makeVoiceStore = (name = 'loafward'): VoiceRows & { readonly close: Stop } =>
  makeRowStore(`${name}-voices`, 'voices');
