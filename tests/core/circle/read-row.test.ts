import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle } from '../../../src/core/circle/circle.ts';
import { readCircle, rowOf } from '../../../src/core/circle/read-circle.ts';
import { readChange, readThing, readWays } from '../../../src/core/circle/read-row.ts';
import { watchedIn } from '../../../src/core/circle/watched.ts';
import { shippedFormula } from '../formula/shipped.ts';
import { changed, inverse, LISTS, put, type Change } from '../../../src/core/circle/row.ts';

const NEIGHBOUR = { id: 'n1', name: 'B', watch: ['milk', 'tree nuts (walnut)'] };
const LINE = { bread: 'lane-wheat', count: 2, grams: null, cut: true };
const ORDER = {
  ...{ id: 'o1', who: 'n1', day: '2031-05-03', at: 600, lines: [LINE], paid: false },
  ...{ handed: null, made: 1_935_000_000_000, standing: null },
};
const STANDING = {
  ...{ id: 's1', who: 'n1', weekday: 6, at: null, lines: [{ ...LINE, grams: 850 }] },
  ...{ from: '2031-05-03', until: null, skips: ['2031-05-10'] },
};
const INGREDIENT = {
  ...{ id: 'wheat flour', name: 'Wheat flour', pack: { grams: 1000, cost: 1.2, usable: 1 } },
  ...{ counted: { grams: 640, at: 1_935_000_000_000 }, madeOf: ['wheat'] },
};
const WAYS: Circle['ways'] = {
  ...{ oven: { from: 480, to: 720 }, closes: { days: 1, at: 1200 }, list: 'us', paper: 'roll' },
  ...{ lines: ['Baker, invented lane 3'], currency: 'GBP', besides: 0.1, times: 2.5 },
};
const GOOD: Circle = {
  ...{ neighbours: [NEIGHBOUR], orders: [ORDER], standing: [STANDING] },
  ...{ ingredients: [INGREDIENT], ways: WAYS },
};
const NOTHING = { before: null, misread: [], gone: new Set() };
const rowsOf = (circle: Circle): Map<unknown, unknown> =>
  new Map<unknown, unknown>([
    ...LISTS.flatMap((list) => circle[list].map((one) => [rowOf(list, one.id), one] as const)),
    ['ways', circle.ways],
  ]);

describe('rows as they were written', () => {
  it('are read back as they were, whatever else stands beside their fields', () => {
    expect(readCircle(rowsOf(GOOD))).toEqual({ circle: GOOD, ...NOTHING });
    const { thing } = readThing('orders', { ...ORDER, more: 'from a newer program' });
    expect(thing).toEqual(ORDER);
    expect(readCircle(new Map())).toEqual({ circle: CIRCLE, ...NOTHING });
  });

  it('have what takes the last change back among them', () => {
    const change: Change = { puts: [put('neighbours', NEIGHBOUR)], ways: { times: 3 } };
    const before = inverse(GOOD, change);
    expect(readChange(structuredClone(before)).change).toEqual(before);
    expect(readChange(inverse(CIRCLE, change)).change).toEqual({
      puts: [{ list: 'neighbours', id: 'n1', thing: null }],
      ways: { times: null },
    });
    expect(changed(changed(GOOD, change), readChange(before).change!)).toEqual(GOOD);
  });
});

describe('the longest that the pages let somebody write', () => {
  it('is read back whole: a packet of many parts or one long one, a line of a label, a great store', () => {
    const parts = Array.from({ length: 999 }, (_, n) => String(n % 10));
    const counted = { grams: 5_000_000, at: 0 };
    for (const madeOf of [parts, ['x'.repeat(2_000)]]) {
      const thing = { ...INGREDIENT, madeOf, counted };
      expect(readThing('ingredients', thing)).toEqual({ thing, reason: null });
    }
    const ways = { ...WAYS, lines: ['y'.repeat(240)] };
    expect(readWays(ways)).toEqual({ ways, misread: [] });
  });
});

describe('what somebody must not eat', () => {
  const watchOf = (watch: readonly string[]): readonly string[] =>
    readThing('neighbours', { ...NEIGHBOUR, watch }).thing!.watch;

  it('is known in whichever tongue it came, and what says more stays beside it', () => {
    expect(watchOf(['Milch', 'Schalenfrüchte (Walnuss)'])).toEqual(NEIGHBOUR.watch);
    expect(watchOf(['lait', 'pas de fraises'])).toEqual(['milk', 'pas de fraises']);
    expect(watchOf(['Spuren von Sesam'])).toEqual(['sesame', 'Spuren von Sesam']);
    expect(readChange({ puts: [put('neighbours', { ...NEIGHBOUR, watch: ['Milch'] })] })).toEqual({
      change: { puts: [put('neighbours', { ...NEIGHBOUR, watch: ['milk'] })] },
      reason: null,
    });
  });

  it('meets a bread that has it', () => {
    const formula = shippedFormula('cherry-hazelnut');
    expect(watchedIn(watchOf(['Haselnüsse']), formula).named).toEqual(['tree nuts (hazelnut)']);
  });

  it('is known in a long list too, of which nothing is lost', () => {
    const others = Array.from({ length: 60 }, (_, n) => `their own ${n}`);
    expect(watchOf([...others, 'Milch'])).toEqual([...others, 'milk']);
  });
});

describe('rows that make no sense', () => {
  const cases = {
    neighbours: NEIGHBOUR,
    orders: ORDER,
    standing: STANDING,
    ingredients: INGREDIENT,
  } as const;
  const wrong: readonly (readonly [keyof typeof cases, object, string, string])[] = [
    ['neighbours', { id: '__proto__' }, 'neighbours.id', 'a text'],
    ['neighbours', { id: 'constructor' }, 'neighbours.id', 'a text'],
    ['neighbours', { id: 7 }, 'neighbours.id', '7'],
    ['neighbours', { name: ' \u200b ' }, 'neighbours.name', 'a text'],
    ['neighbours', { name: null }, 'neighbours.name', 'null'],
    ['neighbours', { watch: 'milk' }, 'neighbours.watch', 'a text'],
    ['neighbours', { watch: [3] }, 'neighbours.watch[0]', '3'],
    ['orders', { day: '2031-02-30' }, 'orders.day', 'a text'],
    ['orders', { at: 1440 }, 'orders.at', '1440'],
    ['orders', { lines: [{ ...LINE, count: NaN }] }, 'orders.lines[0].count', 'NaN'],
    ['orders', { lines: [{ ...LINE, count: 1.5 }] }, 'orders.lines[0].count', '1.5'],
    ['orders', { lines: [{ ...LINE, count: -1 }] }, 'orders.lines[0].count', '-1'],
    ['orders', { lines: [{ ...LINE, grams: Infinity }] }, 'orders.lines[0].grams', 'Infinity'],
    ['orders', { lines: {} }, 'orders.lines', 'an object'],
    ['orders', { paid: 1 }, 'orders.paid', '1'],
    ['orders', { made: '2031' }, 'orders.made', 'a text'],
    ['standing', { weekday: 7 }, 'standing.weekday', '7'],
    ['standing', { until: 'never' }, 'standing.until', 'a text'],
    ['standing', { skips: ['2031-13-01'] }, 'standing.skips[0]', 'a text'],
    ['ingredients', { pack: { grams: 0, cost: 1, usable: 1 } }, 'ingredients.pack.grams', '0'],
    ['ingredients', { pack: { grams: 1, cost: 1, usable: 2 } }, 'ingredients.pack.usable', '2'],
    ['ingredients', { counted: [] }, 'ingredients.counted', 'a list of 0'],
  ];

  it.each(wrong)(
    'of %s: %o is named by its path, without what stands in it',
    (list, part, path, got) => {
      const { thing, reason } = readThing(list, { ...cases[list], ...part });
      expect(thing).toBeNull();
      expect(reason).toMatchObject({ path, got });
      expect(reason!.expected).not.toBe('');
    },
  );

  it('are left out, and the rest of the circle stays', () => {
    const rows = rowsOf(GOOD);
    rows.set('orders:o2', { ...ORDER, id: 'o2', day: 'someday' });
    rows.set('orders:o3', { ...ORDER, id: 'o4' });
    rows.set('neighbours:n2', null);
    rows.set('pictures:p1', {});
    rows.set(7, 'x');
    rows.set('before', { puts: [{ list: 'neighbours', id: 'n9', thing: { ...NEIGHBOUR } }] });
    const { circle, before, misread } = readCircle(rows);
    expect(circle).toEqual(GOOD);
    expect(before).toBeNull();
    expect(misread.map(({ path }) => path)).toEqual([
      'orders.day',
      'orders.id',
      'neighbours',
      'row',
      'row',
      'before.puts[0].thing.id',
    ]);
  });

  it('of the ways are as before anyone has said, each by itself', () => {
    const { ways, misread } = readWays({ ...WAYS, currency: 'pounds', closes: { days: 1 } });
    expect(ways).toEqual({ ...WAYS, currency: 'EUR', closes: null });
    expect(misread.map(({ path }) => path)).toEqual(['ways.closes.at', 'ways.currency']);
    expect(readWays('x')).toMatchObject({ ways: CIRCLE.ways, misread: [{ path: 'ways' }] });
    expect(readWays({ times: 3 })).toEqual({ ways: { ...CIRCLE.ways, times: 3 }, misread: [] });
  });

  it('whatever they hold, never throw, and no reason repeats a text', () => {
    const secret = 'Zanzibar';
    const value = fc.oneof(
      { weight: 3, arbitrary: fc.anything() },
      { weight: 1, arbitrary: fc.constant(secret) },
      { weight: 1, arbitrary: fc.constantFrom(null, [], {}, NaN, [secret], { id: secret }) },
    );
    const part = fc.dictionary(
      fc.constantFrom(
        ...[
          'id',
          'name',
          'watch',
          'who',
          'day',
          'at',
          'lines',
          'skips',
          'pack',
          'madeOf',
          '__proto__',
        ],
      ),
      value,
    );
    fc.assert(
      fc.property(fc.constantFrom(...LISTS), part, value, (list, some, row) => {
        for (const each of [row, { ...cases[list], ...some }, some]) {
          const { thing, reason } = readThing(list, each);
          expect(thing === null).toBe(reason !== null);
          expect(JSON.stringify(reason) ?? '').not.toContain(secret);
          const change = readChange({ puts: [{ list, id: 'x', thing: each }], ways: each });
          expect(JSON.stringify(change.reason) ?? '').not.toContain(secret);
          for (const one of readWays(each).misread) expect(one.got).not.toContain(secret);
        }
      }),
    );
  });

  it('that are too long are cut: a name of a megabyte is one of forty characters', () => {
    const { thing } = readThing('neighbours', { ...NEIGHBOUR, name: 'é'.repeat(1_000_000) });
    expect(thing?.name).toBe('é'.repeat(40));
  });
});
