import type { Formula } from '../formula/formula.ts';
import { GROWTH } from './gas-made.ts';

/** Where the clock of ripeness stands, fitted to bakers' usual times. Common practice, no source. */
export const RIPE = 1.45;

/** A levain is usable this much growth before and after its ripest. Common practice, no source. */
export const USABLE = 1.4;

/**
 * Seed flour as a share of all levain flour, 0–1, for a seed of hydration h (1 = 100 %).
 * Source: arithmetic; a 100 % seed fed 1:a:a gives 0.5/(0.5 + a).
 *
 * @example
 * seedShare({ hydration: 1, feed: { seed: 1, flour: 5 } }) // → 0.09091
 */
export function seedShare(levain: {
  readonly hydration: number;
  readonly feed: Pick<Formula['levain']['feed'], 'seed' | 'flour'>;
}): number {
  const seedFlour = levain.feed.seed / (1 + levain.hydration);
  return seedFlour / (seedFlour + levain.feed.flour);
}

/**
 * Growth m at which a levain is ripest: (1.45 + ln((1 − s)/s))/0.54, s from `seedShare`; usable
 * within ± 1.4. Not below 0: a levain that is nearly all seed is ripe at once.
 * Source: bakers' usual times (common practice, no source). A full-acid rye sour
 * (12–14 h where this says 5) is not served by it.
 *
 * @example
 * ripeGrowth(1 / 3) // → 3.969
 */
export function ripeGrowth(seed: number): number {
  return Math.max(0, (RIPE + Math.log((1 - seed) / seed)) / GROWTH);
}
