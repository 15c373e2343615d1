import { directed, type Frames } from '../../core/ear/frames.ts';
import type { SayingEngine } from './engine.ts';
import { plainFrames } from './plain-engine.ts';
import { MEANS, SPREADS } from './whitening.ts';

/** Runs the two nets; a worker brings its own, and a test. */
export interface Nets {
  /** Samples as they are of 16 bits → rows of 32 numbers. */
  mel(pcm: Float32Array): Promise<Float32Array>;
  /** `count` windows of 76 of these rows → as many rows of LEARNED numbers. */
  embed(batch: Float32Array, count: number): Promise<Float32Array>;
}

/** Numbers in a row of sound, rows in a window and to the next: 0.76 s every 80 ms. The net was taught so. */
const BANDS = 32;
const WINDOW = 76;
const STEP = 8;
/** Numbers in a row of what it makes of a window. */
export const LEARNED = 96;

/** What the net makes of a sound, as it comes. */
export async function learnedRows(run: Nets, sound: Float32Array): Promise<Frames> {
  const mel = await run.mel(Float32Array.from(sound, (sample) => sample * 32_767));
  // The scale the net was taught with.
  const rows = Float32Array.from(mel, (value) => value / 10 + 2);
  const count = Math.max(0, Math.floor((rows.length / BANDS - WINDOW) / STEP) + 1);
  if (count === 0) return { count, size: LEARNED, data: new Float32Array() };
  const batch = new Float32Array(count * WINDOW * BANDS);
  for (let n = 0; n < count; n += 1) {
    const from = n * STEP * BANDS;
    batch.set(rows.subarray(from, from + WINDOW * BANDS), n * WINDOW * BANDS);
  }
  return { count, size: LEARNED, data: Float32Array.from(await run.embed(batch, count)) };
}

/** All its numbers weigh the same, and what is common to all speech is gone. */
const whitened = ({ count, size, data }: Frames): Frames => ({
  count,
  size,
  data: data.map((value, i) => (value - MEANS[i % size]!) / SPREADS[i % size]!),
});

/** What tells them apart by that, and by what a net has learned of speech. */
export const learnedEngine = (run: Nets): SayingEngine => ({
  saying: async (cut) => ({
    plain: plainFrames(cut),
    learned: directed(whitened(await learnedRows(run, cut.sound))),
  }),
});
