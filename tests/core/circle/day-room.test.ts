import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle, type Order, type Standing } from '../../../src/core/circle/circle.ts';
import { askRoom, breadRoom, dayRoom, type RoomAsk } from '../../../src/core/circle/day-room.ts';
import { earlyOrders } from '../../../src/core/circle/early-orders.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { shippedFormula } from '../formula/shipped.ts';

const SATURDAY = '2031-05-03';
const line = (count: number, bread = 'lane-wheat', cut = false) => ({
  bread,
  count,
  grams: null,
  cut,
});
const weekly: Standing = {
  id: 's',
  who: 'b',
  weekday: 6,
  at: null,
  lines: [line(2)],
  from: '2031-01-01',
  until: null,
  skips: [],
};
const written: Order = {
  id: 'o',
  who: 'a',
  day: SATURDAY,
  at: 600,
  lines: [line(3), line(1, 'barley-tin')],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
};
const circle: Circle = {
  ...CIRCLE,
  orders: [written],
  standing: [weekly],
  ways: { ...CIRCLE.ways, oven: { from: 480, to: 900 } },
};
const ask = (more: Partial<RoomAsk> = {}): RoomAsk => ({
  circle,
  day: SATURDAY,
  breads: [shippedFormula('lane-wheat'), shippedFormula('barley-tin')],
  weighIns: [],
  kitchen: { ...EQUIPMENT, fridge: { celsius: null, holds: 6 } },
  ...more,
});

describe('what a day has on it', () => {
  it('is its written and its standing orders, bread by bread, without the one being changed', () => {
    const counts = (more?: Partial<RoomAsk>) =>
      dayRoom(ask(more)).taken.map(({ bread, count }) => [bread, count]);
    expect(counts()).toEqual([
      ['lane-wheat', 5],
      ['barley-tin', 1],
    ]);
    expect(counts({ but: 'o' })).toEqual([['lane-wheat', 2]]);
    expect(counts({ day: '2031-05-10' })).toEqual([['lane-wheat', 2]]);
    expect(counts({ day: '2031-05-11' })).toEqual([]);
  });

  it('has the oven’s hours and the kitchen’s places, as far as they are said', () => {
    expect(dayRoom(ask())).toMatchObject({ has: { oven: 420, fridge: 6 }, from: 480 });
    expect(dayRoom(ask({ circle: CIRCLE }))).toMatchObject({ has: { oven: null }, from: null });
  });

  it('has room by what is least: a place in the fridge, not what the oven would bake', () => {
    expect(breadRoom(ask(), 'lane-wheat', null)).toMatchObject({ more: 1, binds: ['fridge'] });
    // The tin's bread waits in no fridge.
    expect(breadRoom(ask(), 'barley-tin', null)!.binds).toEqual(['oven']);
  });

  it('looks for the next day among those with orders, with what they have on them', () => {
    expect(askRoom(ask(), [line(2)])).toMatchObject({ takes: false, next: '2031-05-10' });
    expect(askRoom(ask(), [line(5)])).toMatchObject({ takes: false, next: null });
    expect(askRoom(ask(), [line(1)])).toMatchObject({ takes: true, next: null });
  });

  it('answers line by line, and leaves out a bread that the Book has no more', () => {
    const { lines } = askRoom(ask(), [line(2, 'gone'), line(2), line(1, 'barley-tin', true)]);
    expect(lines.map(({ line: { bread }, go }) => [bread, go])).toEqual([
      ['lane-wheat', 1],
      ['barley-tin', 1],
    ]);
  });

  it('knows who comes before their bread is cool, sliced bread later than whole, two thousand at once', () => {
    const at = (id: string, minute: number | null, cut = false): Order => ({
      ...written,
      id,
      at: minute,
      lines: [line(1, 'barley-tin', cut)],
    });
    const quick = shippedFormula('barley-tin');
    const breads = [{ ...quick, process: { ...quick.process, cool: 60 } }];
    // Five tins in two places: 3 × 40 + 2 × 10 min from eight, an hour to cool, two before it is sliced.
    const orders = [
      at('a', 679),
      at('b', 680),
      at('c', 739, true),
      at('d', 740, true),
      at('e', null),
    ];
    const some = { ...circle, orders, standing: [] };
    expect(earlyOrders(ask({ circle: some, breads })).map(({ id }) => id)).toEqual(['a', 'c']);
    expect(earlyOrders(ask({ circle: { ...some, ways: CIRCLE.ways }, breads }))).toEqual([]);
    const many = Array.from({ length: 2000 }, (_, i) => at(`${i}`, i % 1440));
    const begun = performance.now();
    expect(earlyOrders(ask({ circle: { ...some, orders: many }, breads })).length).toBe(2000);
    expect(performance.now() - begun).toBeLessThan(250);
  });
});
