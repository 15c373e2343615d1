import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Order } from '../../../src/core/circle/circle.ts';
import { stillToBake } from '../../../src/core/circle/still-to-bake.ts';

const order = (count: number, bread = 'rye', handed: number | null = null): Order => ({
  id: `o${count}${bread}`,
  who: 'a',
  day: '2031-05-03',
  at: null,
  lines: [{ bread, count, grams: null, cut: false }],
  paid: false,
  handed,
  made: 0,
  standing: null,
});
const loavesOf = (days: readonly { readonly orders: readonly Order[] }[]): number =>
  days
    .flatMap(({ orders }) => orders.flatMap(({ lines }) => lines))
    .reduce((sum, { count }) => sum + count, 0);

describe('what is still to be weighed of the orders', () => {
  it('is nothing of what is handed over, and less what is in the making, the earliest first', () => {
    const days = [
      { day: 'sat', orders: [order(2), order(3, 'wheat'), order(4, 'rye', 5)] },
      { day: 'sun', orders: [order(5)] },
    ];
    const still = stillToBake(days, { rye: 3, tin: 9 });
    expect(still.map(({ day }) => day)).toEqual(['sat', 'sun']);
    expect(still[0]!.orders).toEqual([order(3, 'wheat')]);
    expect(still[1]!.orders).toEqual([
      { ...order(5), lines: [{ bread: 'rye', count: 4, grams: null, cut: false }] },
    ]);
  });

  it('loses no loaf and makes none up', () => {
    const day = fc.array(
      fc
        .tuple(fc.integer({ min: 1, max: 9 }), fc.constantFrom('rye', 'wheat'))
        .map(([count, bread]) => order(count, bread)),
    );
    fc.assert(
      fc.property(fc.array(day), fc.nat(30), fc.nat(30), (orders, rye, wheat) => {
        const days = orders.map((each) => ({ orders: each }));
        const still = stillToBake(days, { rye, wheat });
        const of = (bread: string, all: typeof days) =>
          loavesOf(
            all.map((each) => ({
              orders: each.orders.filter(({ lines }) => lines[0]!.bread === bread),
            })),
          );
        expect(of('rye', [...still])).toBe(Math.max(0, of('rye', days) - rye));
        expect(of('wheat', [...still])).toBe(Math.max(0, of('wheat', days) - wheat));
      }),
    );
  });
});
