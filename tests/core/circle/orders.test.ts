import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle, type Order, type Standing } from '../../../src/core/circle/circle.ts';
import { dayAfter, weekdayOf } from '../../../src/core/circle/day-key.ts';
import { daysAhead, ordersOn, standingOrderId, totalsOf } from '../../../src/core/circle/orders.ts';
import { changed, put } from '../../../src/core/circle/row.ts';

const SATURDAY = '2031-05-03';
const wheat = { bread: 'wheat', count: 1, grams: null, cut: false } as const;

const order = (id: string, more: Partial<Order> = {}): Order => ({
  id,
  who: 'a',
  day: SATURDAY,
  at: null,
  lines: [wheat],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
  ...more,
});
const weekly = (id: string, more: Partial<Standing> = {}): Standing => ({
  id,
  who: 'b',
  weekday: 6,
  at: 600,
  lines: [wheat],
  from: '2031-01-01',
  until: null,
  skips: [],
  ...more,
});
const circleOf = (more: Partial<Circle>): Circle => ({ ...CIRCLE, ...more });
const idsOn = (circle: Circle, day = SATURDAY): string[] =>
  ordersOn(circle, day).map(({ id }) => id);

const someDay = fc.integer({ min: 0, max: 60 }).map((n) => dayAfter('2031-04-01', n));
const someLine = fc.record({
  bread: fc.constantFrom('wheat', 'barley', 'olive'),
  count: fc.integer({ min: 1, max: 99 }),
  grams: fc.constantFrom(null, 450, 800, 1200),
  cut: fc.boolean(),
});
const someLines = fc.array(someLine, { minLength: 1, maxLength: 4 });
const someCircle = fc
  .record({
    orders: fc.array(
      fc.record({
        who: fc.constantFrom('a', 'b'),
        day: someDay,
        at: fc.constantFrom(null, 480, 600),
        lines: someLines,
        of: fc.option(fc.nat(3)),
      }),
      { maxLength: 20 },
    ),
    standing: fc.array(
      fc.record({
        weekday: fc.integer({ min: 0, max: 6 }),
        lines: someLines,
        from: someDay,
        until: fc.option(someDay),
        skips: fc.array(someDay, { maxLength: 3 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ orders, standing }) =>
    circleOf({
      orders: orders.map(({ of, ...one }, i) =>
        order(`o${i}`, { ...one, standing: of === null ? null : `s${of}` }),
      ),
      standing: standing.map((one, i) => weekly(`s${i}`, one)),
    }),
  );

describe('orders of a day', () => {
  it('has those that were written and those that stand, by hour and then by name', () => {
    const circle = circleOf({
      neighbours: [
        { id: 'a', name: 'Z of the quay', watch: [] },
        { id: 'b', name: 'the miller', watch: [] },
      ],
      orders: [order('late', { at: 720 }), order('any'), order('ten', { at: 600 })],
      standing: [weekly('s')],
    });
    expect(idsOn(circle)).toEqual([standingOrderId('s', SATURDAY), 'ten', 'late', 'any']);
    expect(idsOn(circle, '2031-05-04')).toEqual([]);
  });

  it('leaves out a day that was skipped, and what has not begun or is over', () => {
    const on = (more: Partial<Standing>) => idsOn(circleOf({ standing: [weekly('s', more)] }));
    expect(on({ skips: [SATURDAY] })).toEqual([]);
    expect(on({ from: '2031-05-04' })).toEqual([]);
    expect(on({ until: '2031-05-02' })).toEqual([]);
    expect(on({ from: SATURDAY, until: SATURDAY })).toHaveLength(1);
  });

  it('has a standing order that was changed for one day as it was written', () => {
    const circle = circleOf({ standing: [weekly('s')] });
    const [due] = ordersOn(circle, SATURDAY);
    const paid = changed(circle, { puts: [put('orders', { ...due!, paid: true, made: 5 })] });
    expect(ordersOn(paid, SATURDAY)).toEqual([{ ...due, paid: true, made: 5 }]);
    expect(ordersOn(paid, '2031-05-10')[0]!.paid).toBe(false);
  });

  it('is for any circle every written order once, and each standing one at most once', () => {
    fc.assert(
      fc.property(someCircle, someDay, (circle, day) => {
        const orders = ordersOn(circle, day);
        const written = circle.orders.filter((one) => one.day === day);
        expect(orders).toEqual(expect.arrayContaining(written));
        const rest = orders.filter((one) => !written.includes(one));
        const due = circle.standing.filter(
          (one) =>
            one.weekday === weekdayOf(day) &&
            one.from <= day &&
            day <= (one.until ?? day) &&
            !one.skips.includes(day) &&
            !written.some(({ standing }) => standing === one.id),
        );
        expect(rest.map(({ standing }) => standing).toSorted()).toEqual(
          due.map(({ id }) => id).toSorted(),
        );
        expect(rest.every((one) => one.made === 0 && one.day === day)).toBe(true);
        expect(new Set(orders.map(({ id }) => id)).size).toBe(orders.length);
      }),
    );
  });
});

describe('what orders come to', () => {
  it('counts by bread and by weight, as the piece comes out first', () => {
    const lines = [
      { ...wheat, grams: 900, count: 2 },
      { ...wheat, bread: 'olive', count: 3 },
      { ...wheat, count: 4, cut: true },
      { ...wheat, count: 1 },
    ];
    expect(totalsOf([order('o', { lines })])).toEqual([
      {
        bread: 'wheat',
        count: 7,
        sizes: [
          { grams: null, count: 5 },
          { grams: 900, count: 2 },
        ],
      },
      { bread: 'olive', count: 3, sizes: [{ grams: null, count: 3 }] },
    ]);
  });
});

describe('the bake days ahead', () => {
  it('are the next ones with orders, none of them before, each as its day by itself', () => {
    fc.assert(
      fc.property(someCircle, someDay, fc.nat(12), (circle, from, count) => {
        const days = daysAhead(circle, from, count);
        expect(days.length).toBeLessThanOrEqual(count);
        const byHand = Array.from({ length: 500 }, (_, i) => dayAfter(from, i))
          .filter(
            (day, i) => (i <= 400 || circle.standing.length === 0) && idsOn(circle, day).length > 0,
          )
          .slice(0, count);
        expect(days.map(({ day }) => day)).toEqual(byHand);
        for (const { day, orders, loaves, totals } of days) {
          expect(orders).toEqual(ordersOn(circle, day));
          const lines = orders.flatMap((one) => one.lines);
          expect(loaves).toBe(lines.reduce((sum, line) => sum + line.count, 0));
          expect(totals).toEqual(totalsOf(orders));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('finds an order years ahead at once, and stops where nothing stands', () => {
    const far = circleOf({
      orders: [order('far', { day: '2960-02-29' })],
      standing: [weekly('s')],
    });
    expect(daysAhead(far, SATURDAY, 3).map(({ day }) => day)).toEqual([
      SATURDAY,
      '2031-05-10',
      '2031-05-17',
    ]);
    expect(daysAhead({ ...far, standing: [] }, SATURDAY, 3).map(({ day }) => day)).toEqual([
      '2960-02-29',
    ]);
    expect(daysAhead(CIRCLE, SATURDAY, 3)).toEqual([]);
  });

  it('are there at once with two thousand orders and fifty that stand', () => {
    const circle = circleOf({
      neighbours: Array.from({ length: 60 }, (_, i) => ({
        id: `n${i}`,
        name: `N ${i}`,
        watch: [],
      })),
      orders: Array.from({ length: 2000 }, (_, i) =>
        order(`o${i}`, {
          who: `n${i % 60}`,
          day: dayAfter('2027-01-01', i),
          at: 480 + (i % 9) * 30,
        }),
      ),
      standing: Array.from({ length: 50 }, (_, i) =>
        weekly(`s${i}`, { weekday: i % 7, skips: [SATURDAY, '2031-05-10'] }),
      ),
    });
    const perCall = (call: () => unknown): number => {
      for (let i = 0; i < 5; i++) call();
      const times = Array.from({ length: 15 }, () => {
        const from = performance.now();
        call();
        return performance.now() - from;
      }).toSorted((a, b) => a - b);
      return times[7]!;
    };
    // 5 ms is what a press may cost; the machine that tests may be five times as slow.
    expect(perCall(() => ordersOn(circle, SATURDAY))).toBeLessThan(25);
    expect(perCall(() => daysAhead(circle, '2031-05-01', 12))).toBeLessThan(25);
    // Standing orders that begin in years: every day up to the last is looked at.
    const sparse = {
      ...circle,
      standing: circle.standing.map((one) => ({ ...one, from: '2039-01-01' })),
    };
    expect(perCall(() => daysAhead(sparse, '2034-01-01', 12))).toBeLessThan(25);
  });
});
