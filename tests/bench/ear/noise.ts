import { HEARD_AT } from '../../../src/core/ear/heard-at.ts';
import { meanPower, spokenPower } from '../../../src/core/ear/spoken-power.ts';
import { seeded } from '../../core/day/support/seeded.ts';

/** A kitchen: a fan's low hum, a tap that runs, and now and then a pan. Invented, no kitchen was recorded. */
export function kitchenNoise(samples: number, seed: number): Float32Array {
  const { next } = seeded(seed);
  const made = new Float32Array(samples);
  let low = 0;
  let hiss = 0;
  let before = 0;
  const hum = 90 + 40 * next();
  for (let n = 0; n < samples; n += 1) {
    const white = next() * 2 - 1;
    low += 0.02 * (white - low);
    hiss = 0.75 * hiss + white - before;
    before = white;
    const water = 0.7 + 0.3 * Math.sin((2 * Math.PI * n * (1.3 + next() * 0.01)) / HEARD_AT);
    made[n] = 1.6 * low + 0.12 * hiss * water + 0.06 * Math.sin((2 * Math.PI * hum * n) / HEARD_AT);
  }
  const pans = Math.round((samples / HEARD_AT) * 0.35 * (0.5 + next()));
  for (let pan = 0; pan < pans; pan += 1) {
    const at = Math.floor(next() * samples);
    const tones = Array.from({ length: 5 }, () => 700 + 4_500 * next());
    const loud = 0.15 + 0.35 * next();
    const long = HEARD_AT * (0.03 + 0.12 * next());
    for (let n = 0; n < long * 4 && at + n < samples; n += 1) {
      const fade = loud * Math.exp(-n / long);
      for (const tone of tones)
        made[at + n]! += (fade / 5) * Math.sin((2 * Math.PI * tone * n) / HEARD_AT);
    }
  }
  return made;
}

/** How loud somebody speaks across a counter, of full. Judgement. */
const SPOKEN = 0.08;

/** A saying in a kitchen: so many dB over its noise, with so much of it before and behind, s. */
export function inKitchen(said: Float32Array, snr: number, seed: number, around = 1): Float32Array {
  const edge = Math.round(around * HEARD_AT);
  const made = kitchenNoise(said.length + 2 * edge, seed);
  const noise = Math.sqrt(meanPower(made));
  const quiet = SPOKEN / (noise * 10 ** (snr / 20));
  const gain = SPOKEN / Math.sqrt(spokenPower(said));
  for (let n = 0; n < made.length; n += 1)
    made[n] = made[n]! * quiet + (said[n - edge] ?? 0) * gain;
  return made;
}
