import { HEARD_AT } from './heard-at.ts';

/** A moment, samples. */
const STEP = HEARD_AT / 100;
/** So far under its loudest moment somebody still speaks, as a power: 30 dB. */
const SPEAKS = 1 / 1_000;

export function meanPower(sound: Float32Array): number {
  let sum = 0;
  for (const sample of sound) sum += sample * sample;
  return sum / Math.max(1, sound.length);
}

/** How loud a saying is without the pauses in it and the silence about it: a mean square; 0 for silence. */
export function spokenPower(sound: Float32Array): number {
  const moments: number[] = [];
  for (let at = 0; at + STEP <= sound.length; at += STEP)
    moments.push(meanPower(sound.subarray(at, at + STEP)));
  const least = Math.max(0, ...moments) * SPEAKS;
  const spoken = moments.filter((power) => power > least);
  return spoken.reduce((sum, power) => sum + power, 0) / Math.max(1, spoken.length);
}
