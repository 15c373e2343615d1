import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  feedFor,
  feedStands,
  ratioOf,
  ripeAt,
  type FeedInput,
} from '../../../src/core/day/feed-plan.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import { feedMass, refed } from '../../../src/core/formula/refed.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { HOUR } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const NOW = Date.UTC(2031, 4, 3, 20);
const input = (change: Partial<FeedInput> = {}): FeedInput => ({
  recipe: RECIPE,
  kitchen: 21,
  seen: [],
  prior: OPENING_BELIEF,
  now: NOW,
  ...change,
});
const gramsOf = (recipe: Recipe, item: string) =>
  recipe.lines.feed.find((line) => line.item === item)!.grams;
const seedOf = (recipe: Recipe) => gramsOf(recipe, 'seed');

describe('a recipe fed from another weight of starter', () => {
  it('makes as much levain, as wet', () => {
    const recipe = refed(RECIPE, 20);
    expect(recipe.lines.feed.map(({ grams }) => grams)).toEqual([20, 90, 90]);
    expect(ratioOf(recipe)).toEqual({ flour: 4.5, water: 4.5 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 190 }), (seed) => {
        expect(Math.abs(feedMass(refed(RECIPE, seed)) - 200)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  it('is as it was where no such weight can be', () => {
    for (const seed of [40, 0, -3, 200, 900, NaN]) expect(refed(RECIPE, seed)).toBe(RECIPE);
  });
});

describe('the hour a feed is ripe', () => {
  it('is the one its window will call likely, in this kitchen and for this starter', () => {
    for (const kitchen of [18, 21, 26]) {
      for (const mean of [-0.3, 0, 0.3]) {
        const prior = { mean, sd: 0.2 };
        const { marks } = waitFor({
          stage: 'levain.ripening',
          now: NOW,
          recipe: RECIPE,
          kitchen,
          entered: {},
          touches: 0,
          prior,
          seen: [],
          done: [],
          again: false,
        });
        const at = ripeAt(input({ kitchen, prior }))!;
        expect(Math.abs(at - marks['likely']!)).toBeLessThan(0.02 * HOUR);
      }
    }
  });

  it('goes by the kitchen as it was measured', () => {
    const seen = [
      { at: NOW - HOUR, reading: { what: 'kitchenTemperature', celsius: 26 } as const },
    ];
    expect(ripeAt(input({ seen }))).toBe(ripeAt(input({ kitchen: 26 })));
  });
});

describe('the feed for a wanted hour', () => {
  it('is ripe at that hour, and usable then', () => {
    const hours = fc.integer({ min: 6, max: 12 });
    fc.assert(
      fc.property(hours, fc.double({ min: 19, max: 24, noNaN: true }), (h, kitchen) => {
        const offer = feedFor(input({ kitchen }), NOW + h * HOUR)!;
        const fed = input({ kitchen, recipe: offer.recipe });
        // The starter is weighed to whole grams here: of 3 g that is a good half hour.
        expect(Math.abs(ripeAt(fed)! - NOW - h * HOUR)).toBeLessThan(0.8 * HOUR);
        expect(feedStands(fed, NOW + h * HOUR)).toBe('fits');
      }),
    );
  });

  it('takes less starter for a later hour, and says where it is beyond 1 : 20 or below 1 : 1', () => {
    const at = (h: number) => feedFor(input(), NOW + h * HOUR)!;
    expect(seedOf(at(8).recipe)).toBeGreaterThan(seedOf(at(10).recipe));
    expect(seedOf(at(10).recipe)).toBeGreaterThan(seedOf(at(12).recipe));
    expect(at(10).doubt).toBe(false);
    expect(at(16).doubt).toBe(true);
    expect(at(5).doubt).toBe(true);
  });

  it('is none where it is too soon for any, or less starter than the scale can show', () => {
    expect(feedFor(input(), NOW + 0.5 * HOUR)).toBeNull();
    expect(feedFor(input(), NOW - HOUR)).toBeNull();
    expect(feedFor(input({ kitchen: 28 }), NOW + 40 * HOUR)).toBeNull();
  });

  it('says how the formula’s own stands: not yet, ripe, past it', () => {
    const ripe = ripeAt(input())!;
    expect(feedStands(input(), ripe)).toBe('fits');
    expect(feedStands(input(), ripe - 6 * HOUR)).toBe('early');
    expect(feedStands(input(), ripe + 6 * HOUR)).toBe('late');
  });
});
