import type { Grams } from '../units.ts';
import type { Formula } from './formula.ts';

/** What makes a levain: starter, flour and water, exact grams. */
export interface Feed {
  readonly seed: Grams;
  readonly flour: Grams;
  readonly water: Grams;
}

/**
 * Seed, flour and water for `levain` grams of levain. Seed : flour is the formula's feed; the
 * water makes the levain's hydration h come out, W = h·F, the seed being kept back from an earlier
 * levain of the same h (judgement). So the dough stays true even if a feed's own water disagrees.
 * Source: F = seed/(1+h) + flour and L = F·(1+h).
 *
 * @example
 * levainFeed({ hydration: 1, feed: { seed: 1, flour: 5, water: 5 } }, 220) // → { seed: 20, flour: 100, water: 100 }
 */
export function levainFeed(levain: Omit<Formula['levain'], 'pff'>, mass: Grams): Feed {
  const { hydration, feed } = levain;
  const flourPerSeed = feed.flour / feed.seed;
  const allFlour = mass / (1 + hydration);
  const seed = allFlour / (1 / (1 + hydration) + flourPerSeed);
  const flour = seed * flourPerSeed;
  return { seed, flour, water: flour * hydration };
}
