import { directed, type Frames } from '../../core/ear/frames.ts';
import type { Begun, SayingEngine } from './engine.ts';
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

const windowsIn = (rows: Float32Array): number =>
  Math.max(0, Math.floor((Math.floor(rows.length / BANDS) - WINDOW) / STEP) + 1);

/** So many windows begin alike: what is loud later changes rows that were there. */
function alike(rows: Float32Array, before: Float32Array): number {
  const other = before.findIndex((value, i) => value !== rows[i]);
  return windowsIn(other < 0 ? before : before.subarray(0, other));
}

/** What the nets make of a sound, as it comes; of what has `begun` with it only the windows that are new. */
async function learn(run: Nets, sound: Float32Array, begun: Begun | null): Promise<Begun> {
  const mel = await run.mel(Float32Array.from(sound, (sample) => sample * 32_767));
  // The scale the net was taught with.
  const rows = Float32Array.from(mel, (value) => value / 10 + 2);
  const count = windowsIn(rows);
  const there = begun ? Math.min(count, alike(rows, begun.rows)) : 0;
  const data = new Float32Array(count * LEARNED);
  if (begun) data.set(begun.learned.data.subarray(0, there * LEARNED));
  if (there < count) {
    const batch = new Float32Array((count - there) * WINDOW * BANDS);
    for (let n = there; n < count; n += 1) {
      const from = n * STEP * BANDS;
      batch.set(rows.subarray(from, from + WINDOW * BANDS), (n - there) * WINDOW * BANDS);
    }
    data.set(await run.embed(batch, count - there), there * LEARNED);
  }
  return { rows, learned: { count, size: LEARNED, data } };
}

/** All its numbers weigh the same, and what is common to all speech is gone. */
const whitened = ({ count, size, data }: Frames): Frames => ({
  count,
  size,
  data: data.map((value, i) => (value - MEANS[i % size]!) / SPREADS[i % size]!),
});

/** What tells them apart by that, and by what a net has learned of speech. */
export const learnedEngine = (run: Nets): SayingEngine => ({
  ahead: (sound, begun) => learn(run, sound, begun),
  saying: async (cut, begun = null) => ({
    plain: plainFrames(cut),
    learned: directed(whitened((await learn(run, cut.sound, begun)).learned)),
  }),
});
