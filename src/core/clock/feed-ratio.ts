import type { Hours } from '../units.ts';
import { GROWTH } from './gas-made.ts';
import { RIPE } from './levain-ripe.ts';

/** A feed by weight, the seed being 1. */
export interface FeedRatio {
  readonly flour: number;
  readonly water: number;
  /** Outside 1:1 to 1:20 of flour, where nothing of the trade bears the clock out. */
  readonly doubt: boolean;
}

/** Flour for one part of seed that bakers feed. Common practice, no source. */
const USUAL = { least: 1, most: 20 } as const;

/**
 * The feed that is ripest after `theta` (h at 26 °C) of a starter of vigour `v`: seed and levain of
 * the given hydrations (1 = 100 %). `null` where even an unfed seed would not be ripe by then, or the
 * levain wanted is drier than its seed can give. The inverse of `ripeGrowth` and `seedShare`.
 * Source: the levain's ripeness; see there.
 *
 * @example
 * feedRatio(3.969, 1, { seed: 1, levain: 1 })?.flour // → 1.0001
 */
export function feedRatio(
  theta: Hours,
  v: number,
  hydration: { readonly seed: number; readonly levain: number },
): FeedRatio | null {
  // s, the seed's share of all flour, from m = (1.45 + ln((1 − s)/s))/0.54
  const rest = Math.exp(GROWTH * v * theta - RIPE);
  const seedFlour = 1 / (1 + hydration.seed);
  const flour = seedFlour * rest;
  const water = hydration.levain * (seedFlour + flour) - hydration.seed * seedFlour;
  if (!(flour > 0) || !Number.isFinite(flour) || water < 0) return null;
  const rounded = Math.round(flour * 1e6) / 1e6;
  return { flour, water, doubt: rounded < USUAL.least || rounded > USUAL.most };
}
