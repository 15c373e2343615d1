import { describe, expect, it } from 'vitest';
import type { Neighbour, Order, OrderLine } from '../../../src/core/circle/circle.ts';
import { pickUps } from '../../../src/core/circle/pick-up.ts';

const line = (bread: string, count: number, more: Partial<OrderLine> = {}): OrderLine => ({
  bread,
  count,
  grams: null,
  cut: false,
  ...more,
});
let made = 0;
const order = (who: string, at: number | null, lines: readonly OrderLine[], more = {}): Order => ({
  id: `of ${who} ${(made += 1)}`,
  ...{ who, day: '2031-05-03', at, lines, paid: false, handed: null, made, standing: null },
  ...more,
});
const neighbour = (id: string, name: string, watch: readonly string[] = []): Neighbour => ({
  id,
  name,
  watch,
});
const LANE = [neighbour('k', 'k'), neighbour('a', 'A'), neighbour('m', 'M 10', ['milk'])];

describe('a day’s pick-up list', () => {
  it('goes by hour, then by name, and those without an hour come last', () => {
    const { hours } = pickUps(
      [
        order('m', null, [line('wheat', 1)]),
        order('k', 960, [line('wheat', 1)]),
        order('m', 960, [line('wheat', 1)]),
        order('a', 960, [line('wheat', 1)]),
        order('k', 540, [line('wheat', 1)]),
      ],
      [...LANE, neighbour('n', 'M 9')],
    );
    expect(hours.map(({ at, of }) => [at, of.map(({ name }) => name)])).toEqual([
      [540, ['k']],
      [960, ['A', 'k', 'M 10']],
      [null, ['M 10']],
    ]);
  });

  it('keeps one whose neighbour is gone, and says what each must not eat', () => {
    const { hours } = pickUps(
      [order('gone', null, [line('wheat', 1)]), order('m', null, [line('wheat', 2)])],
      LANE,
    );
    expect(hours[0]!.of.map(({ name, watch }) => [name, watch])).toEqual([
      ['M 10', ['milk']],
      [null, []],
    ]);
  });

  it('counts loaves by bread and weight, those to cut and those handed over', () => {
    const list = pickUps(
      [
        order('k', 540, [line('wheat', 2, { cut: true }), line('rye', 1)], { handed: 7 }),
        order('a', 540, [line('wheat', 3), line('rye', 1), line('wheat', 1, { grams: 500 })]),
        order('m', 540, [line('wheat', 0)]),
        order('m', 600, []),
      ],
      LANE,
    );
    // A comes before k.
    expect(list.totals).toEqual([
      { bread: 'wheat', grams: null, count: 5, cut: 2, handed: 2 },
      { bread: 'wheat', grams: 500, count: 1, cut: 0, handed: 0 },
      { bread: 'rye', grams: null, count: 2, cut: 0, handed: 1 },
    ]);
    expect([list.loaves, list.handed]).toEqual([8, 3]);
    expect(list.toCome.map(({ name }) => name)).toEqual(['A']);
  });
});
