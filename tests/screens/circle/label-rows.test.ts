import { expect, it } from 'vitest';
import type { Order } from '../../../src/core/circle/circle.ts';
import { labelRows, oneBread, whosFor } from '../../../src/screens/circle/labels/rows.ts';

const order = (who: string, lines: Order['lines']): Order => ({
  ...{ id: who, who, day: '2031-05-03', at: null, lines },
  ...{ paid: false, handed: null, made: 0, standing: null },
});
const line = (bread: string, count: number, own = {}) => ({
  ...{ bread, count, grams: null, cut: false },
  ...own,
});

it('has one label a loaf that is ordered, kind by kind', () => {
  const rows = labelRows([
    order('a', [line('wheat', 2), line('rye', 1, { cut: true })]),
    order('b', [line('wheat', 1), line('wheat', 1, { grams: 500 }), line('rye', 0)]),
  ]);
  expect(rows.map(({ bread, grams, cut, whos }) => [bread, grams, cut, whos])).toEqual([
    ['wheat', null, false, ['a', 'a', 'b']],
    ['rye', null, true, ['a']],
    ['wheat', 500, false, ['b']],
  ]);
});

it('knows whose each is, as far as there are orders', () => {
  const [row] = labelRows([order('a', [line('wheat', 2)])]);
  expect(whosFor(row!, 3)).toEqual(['a', 'a', null]);
  expect(whosFor(row!, 1)).toEqual(['a']);
  expect(whosFor(oneBread('rye'), 2)).toEqual([null, null]);
});
