import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle, type Order, type Standing } from '../../../src/core/circle/circle.ts';
import { NAME_LETTERS } from '../../../src/core/circle/name.ts';
import { byName, erased, hasName, ownName } from '../../../src/core/circle/neighbours.ts';
import { changed } from '../../../src/core/circle/row.ts';

const TODAY = '2031-05-03';
const one = (id: string, name: string) => ({ id, name, watch: [] });
const order = (id: string, day: string, part: Partial<Order> = {}): Order => ({
  ...{ id, who: 'b', day, at: null, lines: [], paid: false, handed: null, made: 0, standing: null },
  ...part,
});
const standing = (id: string, from: string, part: Partial<Standing> = {}): Standing => ({
  ...{ id, who: 'b', weekday: 6, at: null, lines: [], from, until: null, skips: [] },
  ...part,
});

describe('names', () => {
  const circle = { neighbours: [one('1', 'B'), one('2', 'B 2'), one('3', 'É of the mill')] };

  it('are told apart by a number where somebody else has one, large letters or small', () => {
    expect(hasName(circle, ' b ')).toBe(true);
    expect(hasName(circle, 'é of  the mill')).toBe(true);
    expect(hasName(circle, 'C')).toBe(false);
    expect(hasName(circle, 'B', '1')).toBe(false);
    expect(ownName(circle, 'B')).toBe('B 3');
    expect(ownName(circle, 'b', '1')).toBe('b');
    expect(ownName(circle, ' C')).toBe('C');
    expect(ownName(circle, '  ')).toBe('');
    const long = 'x'.repeat(NAME_LETTERS);
    expect(ownName({ neighbours: [one('4', long)] }, long)).toBe(`${long.slice(2)} 2`);
  });

  it('are never the same twice, whatever is typed', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('B', 'b', 'B 2', ' B', 'C')), (typed) => {
        let all: Pick<Circle, 'neighbours'> = { neighbours: [] };
        for (const text of typed) {
          const next = one(String(all.neighbours.length), ownName(all, text));
          all = { neighbours: [...all.neighbours, next] };
        }
        const names = all.neighbours.map(({ name }) => name.toLowerCase());
        expect(new Set(names).size).toBe(names.length);
      }),
    );
  });

  it('stand as one looks for them', () => {
    const names = ['B 10', 'c', 'B 2', 'A'].map((name) => one(name, name));
    expect(byName(names).map(({ name }) => name)).toEqual(['A', 'B 2', 'B 10', 'c']);
  });
});

describe('one who is erased', () => {
  const circle: Circle = {
    ...CIRCLE,
    neighbours: [one('b', 'B'), one('c', 'C')],
    orders: [
      order('past', '2031-04-26'),
      order('today', TODAY),
      order('had', TODAY, { handed: 5 }),
      order('paid', '2031-05-10', { paid: true }),
      order('next', '2031-05-10', { standing: 's' }),
      order('theirs', '2031-05-10', { who: 'c' }),
    ],
    standing: [
      standing('s', '2031-04-05'),
      standing('fresh', '2031-05-10'),
      standing('theirs', '2031-05-10', { who: 'c' }),
    ],
  };

  it('leaves what they had and paid, and nothing else of theirs; the others keep theirs', () => {
    const change = erased(circle, 'b', TODAY);
    const after = changed(circle, change);
    expect(after.neighbours.map(({ id }) => id)).toEqual(['c']);
    expect(after.orders.map(({ id }) => id)).toEqual(['past', 'had', 'paid', 'theirs']);
    expect(after.standing).toEqual([
      standing('s', '2031-04-05', { until: '2031-05-02' }),
      standing('theirs', '2031-05-10', { who: 'c' }),
    ]);
    const keys = change.puts.map(({ list, id }) => `${list}:${id}`);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
