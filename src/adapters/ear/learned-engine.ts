import { directed, type Frames } from '../../core/ear/frames.ts';
import type { SayingEngine } from './engine.ts';
import { plainFrames } from './plain-engine.ts';

/** Runs the two nets; a worker brings its own, and a test. */
export interface Nets {
  /** Samples as they are of 16 bits → rows of MEL numbers. */
  mel(pcm: Float32Array): Promise<Float32Array>;
  /** `count` windows of ROWS rows → as many rows of LEARNED numbers. */
  embed(batch: Float32Array, count: number): Promise<Float32Array>;
}

const MEL = 32;
const ROWS = 76;
const STEP = 8;
const LEARNED = 96;

/** What tells them apart by that, and by what a net has learned of speech. */
export function learnedEngine(run: Nets): SayingEngine {
  const learned = async (sound: Float32Array): Promise<Frames> => {
    const mel = await run.mel(Float32Array.from(sound, (sample) => sample * 32_767));
    // As the net was taught it.
    const rows = Float32Array.from(mel, (value) => value / 10 + 2);
    const count = Math.max(0, Math.floor((rows.length / MEL - ROWS) / STEP) + 1);
    if (count === 0) return { count: 0, size: LEARNED, data: new Float32Array() };
    const batch = new Float32Array(count * ROWS * MEL);
    for (let n = 0; n < count; n += 1)
      batch.set(rows.subarray(n * STEP * MEL, (n * STEP + ROWS) * MEL), n * ROWS * MEL);
    const data = Float32Array.from(await run.embed(batch, count));
    return directed({ count, size: LEARNED, data });
  };
  return {
    saying: async (cut) => ({ plain: plainFrames(cut), learned: await learned(cut.sound) }),
  };
}
