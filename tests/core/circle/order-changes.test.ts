import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle, type Order, type Standing } from '../../../src/core/circle/circle.ts';
import { dayAfter } from '../../../src/core/circle/day-key.ts';
import {
  changedFrom,
  endedBefore,
  lastOf,
  madeStanding,
  takenOff,
  withLines,
} from '../../../src/core/circle/order-changes.ts';
import { ordersOn } from '../../../src/core/circle/orders.ts';
import { changed, inverse, put, type Change } from '../../../src/core/circle/row.ts';

const FIRST = '2031-05-03';
const week = (n: number): string => dayAfter(FIRST, 7 * n);
const wheat = { bread: 'wheat', count: 1, grams: null, cut: false } as const;
const olive = { ...wheat, bread: 'olive' } as const;
const weekly: Standing = {
  id: 's',
  who: 'a',
  weekday: 6,
  at: 600,
  lines: [wheat],
  from: FIRST,
  until: null,
  skips: [],
};
const order = (more: Partial<Order> = {}): Order => ({
  id: 'o',
  who: 'a',
  day: FIRST,
  at: 480,
  lines: [wheat],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
  ...more,
});
const circleOf = (more: Partial<Circle> = {}): Circle => ({
  ...CIRCLE,
  standing: [weekly],
  ...more,
});
const breadsOf = (circle: Circle): string[] =>
  [0, 1, 2, 3, 4].map((n) =>
    ordersOn(circle, week(n))
      .flatMap(({ lines }) => lines.map(({ bread }) => bread))
      .join('+'),
  );
/** Its order of a week, written with something of its own. */
const written = (circle: Circle, n: number, more: Partial<Order>): Circle =>
  changed(circle, {
    puts: [put('orders', { ...ordersOn(circle, week(n))[0]!, made: 9, ...more })],
  });
/** After a change, and back again as it was. */
const after = (circle: Circle, change: Change): Circle => {
  const next = changed(circle, change);
  const back = changed(next, inverse(circle, change));
  for (const list of ['orders', 'standing'] as const) {
    expect(back[list].toSorted((a, b) => (a.id < b.id ? -1 : 1))).toEqual(
      circle[list].toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    );
  }
  return next;
};

describe('lines put to others', () => {
  it('count as many loaves as both, each bread, weight and cut once', () => {
    const line = fc.record({
      bread: fc.constantFrom('a', 'b'),
      count: fc.integer({ min: 1, max: 9 }),
      grams: fc.constantFrom(null, 500),
      cut: fc.boolean(),
    });
    const loaves = (lines: readonly { count: number }[]) =>
      lines.reduce((n, one) => n + one.count, 0);
    fc.assert(
      fc.property(fc.array(line), fc.array(line), (some, more) => {
        const all = withLines(withLines([], some), more);
        expect(loaves(all)).toBe(loaves(some) + loaves(more));
        const kinds = all.map(({ bread, grams, cut }) => `${bread} ${grams} ${cut}`);
        expect(new Set(kinds).size).toBe(kinds.length);
      }),
    );
  });
});

describe('what somebody had last', () => {
  it('is of their latest day, of one day the later written, or what they have standing', () => {
    const orders = [
      order({ id: 'new', day: week(1), lines: [olive], made: 1 }),
      order({ id: 'newer', day: week(1), made: 2 }),
      order({ id: 'old', made: 9 }),
      order({ id: 'other', who: 'b', day: week(3) }),
    ];
    expect(lastOf(circleOf({ orders }), 'a')).toBe(orders[1]);
    expect(lastOf(circleOf(), 'a')).toBe(weekly);
    expect(lastOf(circleOf(), 'b')).toBeNull();
  });
});

describe('an order that is taken off', () => {
  it('is gone, and of a standing one that day alone, also where it was written', () => {
    expect(
      after(
        circleOf({ standing: [], orders: [order()] }),
        takenOff(circleOf({ orders: [order()] }), order()),
      ).orders,
    ).toEqual([]);
    const circle = circleOf();
    const off = after(circle, takenOff(circle, ordersOn(circle, week(1))[0]!));
    expect(breadsOf(off)).toEqual(['wheat', '', 'wheat', 'wheat', 'wheat']);
    const own = written(circle, 1, { lines: [olive] });
    expect(breadsOf(after(own, takenOff(own, ordersOn(own, week(1))[0]!)))).toEqual(breadsOf(off));
  });
});

describe('a standing order from a day on', () => {
  it('is another, and before that day as it was', () => {
    const circle = circleOf({ standing: [{ ...weekly, skips: [week(0), week(3)] }] });
    const next = after(
      circle,
      changedFrom(circle, circle.standing[0]!, week(2), { lines: [olive] }, 'n'),
    );
    expect(breadsOf(next)).toEqual(['', 'wheat', 'olive', '', 'olive']);
  });

  it('takes the order of that day with it, keeps what it was paid, and leaves other days’ own', () => {
    const paid = written(circleOf(), 2, { paid: true });
    const circle = written(paid, 3, { lines: [olive, wheat] });
    const next = after(circle, changedFrom(circle, weekly, week(2), { lines: [olive] }, 'n'));
    expect(breadsOf(next)).toEqual(['wheat', 'wheat', 'olive', 'olive+wheat', 'olive']);
    expect(ordersOn(next, week(2))[0]!.paid).toBe(true);
  });

  it('is changed in its place where it begins on that day', () => {
    const circle = circleOf();
    const next = after(circle, changedFrom(circle, weekly, FIRST, { at: null }, 'n'));
    expect(next.standing).toEqual([{ ...weekly, at: null }]);
    expect(ordersOn(next, FIRST)[0]!.at).toBeNull();
  });

  it('moves to another weekday; what was paid of the old one stays', () => {
    const circle = written(written(circleOf(), 2, { paid: true }), 3, { lines: [olive] });
    const next = after(circle, changedFrom(circle, weekly, week(2), { weekday: 0 }, 'n'));
    expect(breadsOf(next)).toEqual(['wheat', 'wheat', 'wheat', '', '']);
    expect(ordersOn(next, dayAfter(week(2), 1))).toHaveLength(1);
  });

  it('leaves every day before it as it was, whatever is changed and whatever was written', () => {
    const weeks = fc.integer({ min: 0, max: 5 });
    fc.assert(
      fc.property(
        fc.uniqueArray(weeks, { maxLength: 4 }),
        fc.uniqueArray(weeks, { maxLength: 4 }),
        weeks,
        fc.record(
          { lines: fc.constant([olive]), at: fc.constant(null), weekday: fc.nat(6) },
          { requiredKeys: [] },
        ),
        (skips, own, from, part) => {
          const first = circleOf({ standing: [{ ...weekly, skips: skips.map(week) }] });
          const circle = own
            .filter((n) => !skips.includes(n))
            .reduce((one, n) => written(one, n, { lines: [olive, wheat] }), first);
          const its = circle.standing[0]!;
          const days = Array.from({ length: 7 * from }, (_, i) => dayAfter(FIRST, i));
          const before = days.map((day) => ordersOn(circle, day));
          for (const change of [
            changedFrom(circle, its, week(from), part, 'n'),
            endedBefore(circle, its, week(from)),
          ]) {
            const next = after(circle, change);
            expect(days.map((day) => ordersOn(next, day))).toEqual(before);
            // And never two of it on one day.
            for (let n = from; n < 8; n++) {
              const orders = ordersOn(next, week(n));
              expect(new Set(orders.map(({ standing }) => standing)).size).toBe(orders.length);
            }
          }
        },
      ),
    );
  });

  it('ends, but for what is paid or handed over', () => {
    const circle = written(written(circleOf(), 2, { lines: [olive] }), 3, { handed: 5 });
    const next = after(circle, endedBefore(circle, weekly, week(2)));
    expect(breadsOf(next)).toEqual(['wheat', 'wheat', '', 'wheat', '']);
    expect(after(circle, endedBefore(circle, weekly, FIRST)).standing).toEqual([]);
  });
});

describe('an order made to stand', () => {
  it('is the first of it, with what was said of it alone', () => {
    const one = order({ paid: true });
    const circle = circleOf({ standing: [], orders: [one] });
    const next = after(circle, madeStanding(one, 's'));
    expect(breadsOf(next)).toEqual(['wheat', 'wheat', 'wheat', 'wheat', 'wheat']);
    expect(ordersOn(next, FIRST)).toEqual([{ ...one, id: `s@${FIRST}`, standing: 's' }]);
    expect(ordersOn(next, week(1))[0]).toMatchObject({ paid: false, at: 480, made: 0 });
  });
});
