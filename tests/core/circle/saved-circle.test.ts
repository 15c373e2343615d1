import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle } from '../../../src/core/circle/circle.ts';
import { changed, type Change } from '../../../src/core/circle/row.ts';
import { broughtIn, readSavedCircle, savedCircle } from '../../../src/core/circle/saved-circle.ts';

const ORDER = {
  ...{ id: 'o1', who: 'b', day: '2031-05-03', at: 600, paid: true, handed: null, made: 5 },
  ...{ lines: [{ bread: 'lane-wheat', count: 2, grams: 850, cut: true }], standing: 's1' },
};
const HERE: Circle = {
  ...CIRCLE,
  neighbours: [
    { id: 'z', name: 'Zanzibar', watch: ['sesame'] },
    { id: 'b', name: 'B', watch: [] },
  ],
  orders: [ORDER],
  standing: [
    {
      ...{ id: 's1', who: 'b', weekday: 6, at: null, lines: ORDER.lines },
      ...{ from: '2031-05-03', until: null, skips: [] },
    },
  ],
  ingredients: [{ id: 'salt', name: 'Salt', pack: null, counted: null, madeOf: [] }],
  ways: { ...CIRCLE.ways, currency: 'GBP', lines: ['The maker, harbour lane'] },
};
const lines = (circle: Circle, names: boolean): unknown[] =>
  JSON.parse(JSON.stringify(savedCircle(circle, names))) as unknown[];
const read = (rows: readonly unknown[]): Change => {
  const { saved, reason } = readSavedCircle(rows);
  expect(reason).toBeNull();
  return saved!;
};
const NOBODY = new Set<string>();

describe('a circle in a saved file', () => {
  it('is all of it where names were ticked', () => {
    const change = broughtIn(CIRCLE, read(lines(HERE, true)), NOBODY);
    expect(changed(CIRCLE, change)).toEqual(HERE);
  });

  it('has marks for names where they were not, and nothing else of who somebody is', () => {
    const told = lines(HERE, false);
    expect(JSON.stringify(told)).not.toMatch(/Zanzibar|sesame|maker|"B"/);
    const there = changed(CIRCLE, broughtIn(CIRCLE, read(told), NOBODY));
    expect(there.neighbours).toEqual([
      { id: 'b', name: 'N 1', watch: [] },
      { id: 'z', name: 'N 2', watch: [] },
    ]);
    expect(there.orders).toEqual(HERE.orders);
    expect(there.standing).toEqual(HERE.standing);
    expect(there.ways).toEqual({ ...HERE.ways, lines: [] });
  });

  it('is no line where nobody has begun one', () => {
    expect(savedCircle(CIRCLE, true)).toEqual([]);
  });

  it.each([
    ['no row', ['Zanzibar'], 0, 'circle'],
    ['a cut row', [{ circle: 'orders' }], 0, 'circle'],
    ['another list', [{ circle: 'pictures', row: {} }], 0, 'circle'],
    ['a list that every object has', [{ circle: 'constructor', row: {} }], 0, 'circle'],
    [
      'a name that is none',
      [{ circle: 'neighbours', row: { id: 'b', name: 7 } }],
      0,
      'neighbours.name',
    ],
    [
      'a day there is not',
      [{ circle: 'orders', row: { ...ORDER, day: 'Zanzibar' } }],
      0,
      'orders.day',
    ],
    ['ways that are none', [{ circle: 'ways', row: { currency: 'Zanzibar' } }], 0, 'ways.currency'],
    [
      'one twice',
      [
        { circle: 'orders', row: ORDER },
        { circle: 'orders', row: ORDER },
      ],
      1,
      'circle',
    ],
    [
      'ways twice',
      [
        { circle: 'ways', row: {} },
        { circle: 'ways', row: {} },
      ],
      1,
      'circle',
    ],
  ] as const)('is refused whole by %s, and not by what stands in it', (_, rows, at, path) => {
    const { saved, reason } = readSavedCircle(rows);
    expect(saved).toBeNull();
    expect(reason).toMatchObject({ at, path });
    expect(JSON.stringify(reason)).not.toContain('Zanzibar');
  });

  it('is refused or read, and never throws', () => {
    const row = fc.oneof(
      fc.anything(),
      fc.record({ circle: fc.constantFrom('orders', 'ways', 'neighbours'), row: fc.anything() }),
      fc.json().map((text): unknown => JSON.parse(text)),
    );
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        const { saved, reason } = readSavedCircle(rows);
        expect(saved === null).toBe(reason !== null);
      }),
    );
  });
});

describe('a circle brought in', () => {
  it('writes over nothing that is here', () => {
    const there: Circle = {
      ...HERE,
      neighbours: HERE.neighbours.map((one) => ({ ...one, name: `${one.name} of old` })),
      orders: [
        { ...ORDER, paid: false },
        { ...ORDER, id: 'o2' },
      ],
      ways: { ...HERE.ways, currency: 'CHF', times: 3 },
    };
    const change = broughtIn(HERE, read(lines(there, true)), NOBODY);
    expect(change.puts.map(({ id }) => id)).toEqual(['o2']);
    expect(change.ways).toEqual({ times: 3 });
    const after = changed(HERE, change);
    expect(after.neighbours).toEqual(HERE.neighbours);
    expect(after.orders[0]).toEqual(ORDER);
    expect(after.ways).toEqual({ ...HERE.ways, times: 3 });
    // And a second time it changes nothing more.
    expect(broughtIn(after, read(lines(there, true)), NOBODY)).toEqual({ puts: [] });
  });

  it('tells names apart, and brings nobody back who was erased here', () => {
    const here: Circle = { ...CIRCLE, neighbours: [{ id: 'other', name: 'b', watch: [] }] };
    const change = broughtIn(here, read(lines(HERE, true)), new Set(['z']));
    expect(changed(here, change).neighbours.map(({ name }) => name)).toEqual(['b', 'B 2']);
  });
});
