import type { Circle, Order, OrderLine } from '../../../src/core/circle/circle.ts';

/** The day on which the tests begin: open-app.ts, START. */
export const TODAY = '2026-03-06';

const line = (bread: string, count: number, more: Partial<OrderLine> = {}): OrderLine => ({
  ...{ bread, count, grams: null, cut: false },
  ...more,
});
const order = (id: string, who: string, at: number | null, more: Partial<Order> = {}): Order => ({
  ...{ id, who, day: TODAY, at, paid: false, handed: null, made: 1, standing: null },
  lines: [line('lane-wheat', 2, { cut: true })],
  ...more,
});

/** A circle with orders for today: one fetched and paid, some who must not eat a thing, one of no hour. */
export const LANE: Partial<Circle> = {
  neighbours: [
    { id: 'a', name: 'K', watch: [] },
    { id: 'b', name: 'Q', watch: ['tree nuts'] },
    { id: 'c', name: 'B of the small house on the harbour lane', watch: ['milk', 'sesame'] },
    { id: 'd', name: 'The mill', watch: [] },
  ],
  orders: [
    order('1', 'a', 960, { handed: Date.UTC(2026, 2, 6, 16, 5), paid: true }),
    order('2', 'b', 1050, {
      lines: [line('cherry-hazelnut', 1), line('lane-wheat', 1, { grams: 500 })],
    }),
    order('3', 'c', 1080, {
      lines: [line('olive-seed', 2, { cut: true }), line('cherry-hazelnut', 1)],
    }),
    order('4', 'd', null, { lines: [line('lane-wheat', 12)], paid: true }),
  ],
  standing: [
    {
      ...{ id: 's', who: 'd', weekday: 0, at: 600, lines: [line('barley-tin', 2)] },
      ...{ from: TODAY, until: null, skips: [] },
    },
  ],
};
