import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchesOf, inBatches, type BatchWorld } from '../../../src/core/circle/batches.ts';
import type { Order, OrderLine } from '../../../src/core/circle/circle.ts';
import { shippedFormula } from '../formula/shipped.ts';

const wheat = shippedFormula('lane-wheat');
const cherry = shippedFormula('cherry-hazelnut');
const WORLD: BatchWorld = { formulas: [wheat, cherry], weighIns: [], scale: null };

type Asked = Pick<Order, 'at' | 'lines'>;
const line = (bread: string, count: number, grams: number | null = null): OrderLine => {
  return { bread, count, grams, cut: false };
};
const order = (at: number | null, ...lines: OrderLine[]): Asked => ({ at, lines });
const told = (orders: readonly Asked[], world = WORLD) =>
  batchesOf(orders, world).batches.map(({ formula, grams, loaves, piece, at }) => {
    return [formula.id, grams, loaves, piece, at];
  });

describe('the batches of a day’s orders', () => {
  it('are one a bread and weight, in the Book’s order, each for its earliest hour', () => {
    const orders = [
      order(1020, line('cherry-hazelnut', 2), line('lane-wheat', 1, 700)),
      order(540, line('lane-wheat', 3)),
      order(null, line('lane-wheat', 2, 700), line('cherry-hazelnut', 1)),
    ];
    expect(told(orders)).toEqual([
      ['lane-wheat', 700, 3, 805, 1020],
      ['lane-wheat', null, 3, 900, 540],
      ['cherry-hazelnut', null, 3, 900, 1020],
    ]);
  });

  it('have a loaf asked for by the weight that it has anyway with the others', () => {
    expect(told([order(null, line('lane-wheat', 2, 783), line('lane-wheat', 1))])).toEqual([
      ['lane-wheat', null, 3, 900, null],
    ]);
  });

  it('take the dough that such a loaf takes in this kitchen', () => {
    const weighIns = [{ dough: 900, loaf: 720, vessel: 'pot' as const }];
    const [[, , , piece]] = told([order(null, line('lane-wheat', 1, 700))], {
      ...WORLD,
      weighIns,
    }) as [[unknown, unknown, unknown, number]];
    expect(piece).toBeGreaterThan(830);
    // What a tin taught is no pot's.
    const tins = weighIns.map((one) => ({ ...one, vessel: 'tin' as const }));
    expect(told([order(null, line('lane-wheat', 1, 700))], { ...WORLD, weighIns: tins })).toEqual([
      ['lane-wheat', 700, 1, 805, null],
    ]);
  });

  it('are several of more than 36 loaves, as even as can be', () => {
    expect(told([order(600, line('lane-wheat', 37))])).toEqual([
      ['lane-wheat', null, 19, 900, 600],
      ['lane-wheat', null, 18, 900, 600],
    ]);
  });

  it('leave out a bread that the Book has no more, and say so', () => {
    const asked = [
      order(540, line('gone', 2), line('lane-wheat', 1)),
      order(null, line('gone', 1)),
    ];
    expect(batchesOf(asked, WORLD).troubles).toEqual([
      { bread: 'gone', loaves: 3, reason: { key: 'breadGone', values: { loaves: 3 } } },
    ]);
    expect(told(asked)).toHaveLength(1);
  });

  it('leave out what no recipe can be made of, with its reason', () => {
    const { batches, troubles } = batchesOf([order(null, line('lane-wheat', 2, 40))], WORLD);
    expect(batches).toEqual([]);
    expect(troubles).toMatchObject([
      { bread: 'lane-wheat', loaves: 2, reason: { key: 'pieceOutside' } },
    ]);
  });

  it('lose no loaf and add none, whatever is ordered', () => {
    const anyLine = fc.record({
      bread: fc.constantFrom('lane-wheat', 'cherry-hazelnut', 'gone'),
      count: fc.integer({ min: 1, max: 60 }),
      grams: fc.option(fc.integer({ min: 40, max: 2600 })),
      cut: fc.boolean(),
    });
    const anyOrder = fc.record({
      at: fc.option(fc.integer({ min: 0, max: 1439 })),
      lines: fc.array(anyLine, { maxLength: 4 }),
    });
    fc.assert(
      fc.property(fc.array(anyOrder, { maxLength: 8 }), (orders) => {
        const { batches, troubles } = batchesOf(orders, WORLD);
        const sum = (all: readonly { loaves: number }[]) =>
          all.reduce((loaves, one) => loaves + one.loaves, 0);
        const asked = orders.flatMap(({ lines }) => lines).reduce((n, { count }) => n + count, 0);
        expect(sum(batches) + sum(troubles)).toBe(asked);
        for (const { loaves, recipe } of batches) {
          expect(loaves).toBeLessThanOrEqual(36);
          expect(recipe.loaves).toBe(loaves);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('share what is too many evenly', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (loaves) => {
        const shares = inBatches(loaves);
        expect(shares.reduce((a, b) => a + b)).toBe(loaves);
        expect(Math.max(...shares) - Math.min(...shares)).toBeLessThanOrEqual(1);
        expect(Math.max(...shares)).toBeLessThanOrEqual(36);
      }),
    );
  });
});
