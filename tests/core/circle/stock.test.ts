import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { counted, packsMore, stockOf, takenBy } from '../../../src/core/circle/stock.ts';
import { usesOf } from '../../../src/core/circle/uses.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { HOUR } from '../../../src/core/units.ts';
import { FROM, ingredient, recipeOf, rowsOf, startOf } from './support.ts';

const recipe = recipeOf('lane-wheat', 4);
const [wheat] = usesOf(recipe);
const flour = (grams: number, at: number) =>
  ingredient('strong wheat flour', { counted: { grams, at } });
const id = 'strong wheat flour';

describe('what should be in the cupboard', () => {
  it('is the last count less what bakes begun since then took', () => {
    const taken = takenBy(rowsOf(startOf(recipe), startOf(recipe)));
    const left = (at: number) => stockOf([flour(10_000, at)], taken)(id).grams;
    expect(left(FROM - 1)).toBeCloseTo(10_000 - 2 * wheat!.grams, 6);
    expect(left(FROM)).toBeCloseTo(10_000 - wheat!.grams, 6);
    expect(left(FROM + HOUR)).toBe(10_000);
  });

  it('does not miss what a start that was taken back would have used', () => {
    const taken = takenBy(rowsOf(startOf(recipe), { kind: 'takeBack', target: 'f1' }));
    expect(stockOf([flour(500, FROM - 1)], taken)(id)).toEqual({ grams: 500, why: null });
  });

  it('misses of a bake that was ended only what was weighed by then', () => {
    const end = { kind: 'press', who: 'bake-2', act: 'ended' } as const;
    const left = (stage: BakeStage, ...more: readonly Deed[]): number => {
      const [first, ...others] = rowsOf(startOf(recipe), end, ...more);
      const bakes = { 'bake-2': { stage } } as unknown as LogRecord['position']['bakes'];
      const row = { ...first!, position: { ...first!.position, bakes } };
      return stockOf([flour(10_000, FROM - 1)], takenBy([row, ...others]))(id).grams!;
    };
    const fed = recipe.lines.feed.find(({ name }) => name === id)!.grams;
    expect(left('read.plan')).toBe(10_000);
    expect(left('levain.feed')).toBe(10_000);
    expect(left('levain.ripening')).toBeCloseTo(10_000 - fed, 6);
    expect(left('mix.weigh')).toBeCloseTo(10_000 - fed, 6);
    expect(left('mix.first')).toBeCloseTo(10_000 - wheat!.grams, 6);
    // The end was taken back: the bake goes on.
    expect(left('levain.feed', { kind: 'takeBack', target: 'f2' })).toBeCloseTo(
      10_000 - wheat!.grams,
      6,
    );
  });

  it('is never below nothing: it was counted too long ago', () => {
    const taken = takenBy(rowsOf(startOf(recipe)));
    expect(stockOf([flour(10, FROM - 1)], taken)(id)).toEqual({ grams: null, why: 'tooLongAgo' });
    expect(stockOf([flour(wheat!.grams, FROM - 1)], taken)(id)).toEqual({ grams: 0, why: null });
    expect(stockOf([ingredient('salt')], taken)('salt').why).toBe('notCounted');
    expect(stockOf([], taken)('rice flour').why).toBe('notCounted');
  });

  it('goes down by what was bought for it where not all of it can be used', () => {
    const taken = [{ at: FROM, uses: [{ id: 'olives', name: 'Olives', grams: 150 }] }];
    const olives = ingredient('Olives', {
      counted: { grams: 1000, at: FROM - 1 },
      pack: { grams: 500, cost: 4, usable: 0.75 },
    });
    expect(stockOf([olives], taken)('olives').grams).toBeCloseTo(800, 9);
  });

  it('is put right by one press', () => {
    const pack = { grams: 1000, cost: 2, usable: 1 };
    const one = ingredient('Salt', { pack, counted: { grams: 200, at: FROM } });
    expect(counted(one, 0, FROM + 5).counted).toEqual({ grams: 0, at: FROM + 5 });
    const there = { grams: 150, why: null };
    expect(packsMore(one, 2, there, FROM + 5).counted).toEqual({ grams: 2150, at: FROM + 5 });
    const nobody = { grams: null, why: 'tooLongAgo' } as const;
    expect(packsMore(one, 1, nobody, FROM + 5).counted).toEqual({ grams: 1000, at: FROM + 5 });
    const bare = ingredient('Rye');
    expect(packsMore(bare, 1, nobody, FROM)).toBe(bare);
  });

  it('is the same whether bakes come one by one or a count is taken between them', () => {
    const use = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(fc.array(use, { maxLength: 12 }), fc.nat(12), (grams, cut) => {
        const taken = grams.map((g, i) => ({
          at: FROM + i,
          uses: [{ id: 'rye', name: 'Rye', grams: g }],
        }));
        const first = ingredient('Rye', { counted: { grams: 5000, at: FROM - 1 } });
        const all = stockOf([first], taken)('rye');
        const half = stockOf([first], taken.slice(0, cut))('rye');
        const again = counted(first, half.grams!, FROM + cut - 1);
        expect(stockOf([again], taken)('rye')).toEqual(all);
        expect(all.grams).toBe(5000 - grams.reduce((a, b) => a + b, 0));
      }),
    );
  });
});
