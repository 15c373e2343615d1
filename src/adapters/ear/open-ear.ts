import type { Ear } from '../../../machines/ear-port.ts';
import type { Stop } from '../../../machines/ports.ts';
import { browserEar } from './browser-ear.ts';
import { makeEar } from './make-ear.ts';
import { soundTone } from './sound-tone.ts';

/** The ear of this browser. `audio`: where all else sounds; null while nothing can. */
export const openEar = (
  later: (ms: number, then: () => void) => Stop,
  audio: () => AudioContext | null,
): Ear => makeEar(browserEar(later, (which) => soundTone(audio(), which, later)));
