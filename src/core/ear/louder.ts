import { HEARD_AT } from './heard-at.ts';
import { meanPower, spokenPower } from './spoken-power.ts';

/** How far a louder kitchen is under the saying, dB: tried on made voices. */
const UNDER_DB = 14;

/** Chance with a seed: the same saying has the same copy (mulberry32, public domain). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/**
 * A saying as it sounds in a louder kitchen: with a fan's low rumble and the hiss of a tap. A voice that was
 * enrolled in a quiet one is known again in that.
 */
export function louder(sound: Float32Array, seed: number): Float32Array<ArrayBuffer> {
  const chance = seeded(seed);
  const noise = new Float32Array(sound.length);
  const turns = 1 + 0.5 * chance();
  let low = 0;
  for (let n = 0; n < noise.length; n += 1) {
    const white = 2 * chance() - 1;
    low += 0.02 * (white - low);
    const water = 0.7 + 0.3 * Math.sin((2 * Math.PI * n * turns) / HEARD_AT);
    noise[n] = 1.6 * low + 0.12 * white * water;
  }
  const loudest = meanPower(noise);
  const gain = loudest > 0 ? Math.sqrt(spokenPower(sound) / loudest / 10 ** (UNDER_DB / 10)) : 0;
  return Float32Array.from(sound, (sample, n) => sample + gain * noise[n]!);
}
