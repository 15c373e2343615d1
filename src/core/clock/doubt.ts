import type { Celsius } from '../units.ts';

/**
 * Why a number of the clock is in doubt; a key of the catalogue. In the order they are told:
 * kitchenUnknown (no number; 21 °C was taken) · kitchenCold, kitchenHot (outside 3–30 °C; beyond
 * −5 and 55 the end was taken) · tooCold (not ready within the horizon; its end was taken) ·
 * above28 (the yeasts part) · pff, salt, rye, hydration, rise (outside what the clock was fitted
 * to) · coldProof (in the fridge there is no minute) · laterThanModel (the dough takes longer than
 * the clock expected of the slowest) · oddReading (a reading outside what is usual, kept, is in it).
 */
export type Doubt =
  | 'kitchenUnknown'
  | 'kitchenCold'
  | 'kitchenHot'
  | 'tooCold'
  | 'above28'
  | 'pff'
  | 'salt'
  | 'rye'
  | 'hydration'
  | 'rise'
  | 'coldProof'
  | 'laterThanModel'
  | 'oddReading';

/** What the clock is asked about. Shares 0–1, salt, hydration and rise in %. */
export interface ClockInput {
  readonly celsius: Celsius;
  readonly p: number;
  readonly salt: number;
  readonly rye: number;
  readonly hydration: number;
  readonly rise: number;
}

/** Where the clock holds, ends included. Source: the dough clock's stated range; judgement. */
const VALID = [
  ['pff', (i: ClockInput) => i.p, 0.02, 0.25],
  ['salt', (i: ClockInput) => i.salt, 0, 2.5],
  ['rye', (i: ClockInput) => i.rye, 0, 0.4],
  ['hydration', (i: ClockInput) => i.hydration, 70, 90],
  ['rise', (i: ClockInput) => i.rise, 0, 110],
] as const;

/** Temperature taken where none is known, °C. Judgement: a common kitchen. */
const KITCHEN: Celsius = 21;

/**
 * A kitchen or dough temperature fit to compute with, never NaN, and the doubt that belongs to it.
 * Source: valid 3–30 °C, shown in doubt from 28 up; −5 and 55 are judgement.
 *
 * @example
 * saneCelsius(31) // → { celsius: 31, doubt: 'kitchenHot' }
 */
export function saneCelsius(celsius: Celsius): {
  readonly celsius: Celsius;
  readonly doubt: Doubt | null;
} {
  if (Number.isNaN(celsius)) return { celsius: KITCHEN, doubt: 'kitchenUnknown' };
  const held = Math.min(55, Math.max(-5, celsius));
  if (held < 3) return { celsius: held, doubt: 'kitchenCold' };
  if (held > 30) return { celsius: held, doubt: 'kitchenHot' };
  return { celsius: held, doubt: held > 28 ? 'above28' : null };
}

/**
 * The first doubt about what the clock is asked, or null where it holds. NaN is always in doubt.
 * Source: 3–30 °C, p .02–.25, 70–90 % hydration, salt ≤ 2.5 %, rye ≤ 40 %, rise ≤ 110 %, and the
 * doubt from 28 °C up.
 *
 * @example
 * clockDoubt({ celsius: 24, p: 0.3, salt: 2, rye: 0, hydration: 75, rise: 90 }) // → 'pff'
 */
export function clockDoubt(input: ClockInput): Doubt | null {
  const { doubt } = saneCelsius(input.celsius);
  if (doubt !== null) return doubt;
  const outside = VALID.find(([, of, least, most]) => !(of(input) >= least && of(input) <= most));
  return outside?.[0] ?? null;
}
