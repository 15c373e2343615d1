import Meyda from 'meyda';
import { halved, levelled, moving, type Frames } from '../../core/ear/frames.ts';
import { HEARD_AT, type Cut } from '../../core/ear/listener.ts';
import type { SayingEngine } from './engine.ts';

/** A window and a step of the cepstrum, samples: 32 and 10 ms, as they are used for speech. */
const WINDOW = 512;
const STEP = 160;
/** Kept of the margins, samples. */
const EDGE = HEARD_AT * 0.05;
const MARGIN = HEARD_AT * 0.35;

const cepstrum = (sound: Float32Array): Frames => {
  Meyda.bufferSize = WINDOW;
  Meyda.sampleRate = HEARD_AT;
  Meyda.melBands = 26;
  Meyda.numberOfMFCCCoefficients = 13;
  Meyda.windowingFunction = 'hamming';
  const rows: number[][] = [];
  const bright = Float32Array.from(sound, (sample, n) => sample - 0.97 * (sound[n - 1] ?? sample));
  for (let at = 0; at + WINDOW <= bright.length; at += STEP)
    rows.push(Meyda.extract('mfcc', bright.subarray(at, at + WINDOW)) as unknown as number[]);
  return { count: rows.length, size: 13, data: Float32Array.from(rows.flat()) };
};

export const plainFrames = ({ sound, lead }: Cut): Frames => {
  const said = sound.subarray(Math.max(0, lead - EDGE), sound.length - (MARGIN - EDGE));
  return halved(moving(levelled(cepstrum(said))));
};

/** What tells sayings apart by the shape of their sound alone. */
export const plainEngine: SayingEngine = {
  saying: (cut) => Promise.resolve({ plain: plainFrames(cut), learned: null }),
};
