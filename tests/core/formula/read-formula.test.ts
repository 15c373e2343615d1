import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { idOf } from '../../../src/core/sheets/sheet-ids.ts';
import { rawFormula, SHIPPED } from './shipped.ts';

const file = (): Record<string, unknown> =>
  rawFormula('cherry-hazelnut') as Record<string, unknown>;
const change = (over: Record<string, unknown>) => readFormula({ ...file(), ...over }).reason;

/** Every path of a JSON value down to its leaves. */
const paths = (value: unknown, path: (string | number)[] = []): (string | number)[][] =>
  typeof value === 'object' && value !== null
    ? [path, ...Object.entries(value).flatMap(([k, v]) => paths(v, [...path, k]))]
    : [path];

const replaced = (value: unknown, [head, ...rest]: (string | number)[], by: unknown): unknown => {
  if (head === undefined) return by;
  const copy = (
    Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) }
  ) as Record<string | number, unknown>;
  copy[head] = replaced(copy[head], rest, by);
  return copy;
};

/** A file that leaves nothing out that may be left out. */
const full = (): Record<string, unknown> => ({
  ...file(),
  doughCelsius: 26,
  fillingsOf: 'dough',
  convention: 'bowl',
  notes: 'Every line\nof it.',
  levain: {
    ...(file()['levain'] as object),
    flours: [
      { id: 'wheat', pct: 60 },
      { id: 'rye', pct: 40 },
    ],
  },
  fillings: [
    {
      id: 'oats',
      name: 'oats',
      pct: 10,
      keeps: 'shelf',
      allergens: ['gluten (oats)'],
      packet: 'read',
      prepare: ['soak'],
      group: 'grains',
      soak: { water: 120 },
      brings: { salt: 0.5, water: 8 },
      from: 'freezer',
    },
  ],
});

describe('readFormula', () => {
  it('reads whole what leaves nothing out', () => {
    expect(readFormula(full()).formula).toEqual(full());
  });

  it('names the place in what may be left out', () => {
    const levain = (flours: unknown) =>
      change({ levain: { ...(file()['levain'] as object), flours } });
    expect(levain([{ id: 'oat', pct: 100 }])).toEqual({
      path: 'levain.flours[0].id',
      expected: 'one of wheat, rye',
      got: '"oat"',
    });
    expect(levain([{ id: 'rye', pct: 90 }])).toEqual({
      path: 'levain.flours',
      expected: 'pct that sum to 100',
      got: 'a sum of 90',
    });
    const half = { id: 'rye', pct: 50 };
    expect(levain([half, half])?.path).toBe('levain.flours[1].id');
    expect(change({ fillingsOf: 'water' })?.path).toBe('fillingsOf');
    expect(change({ convention: 'both' })?.expected).toBe('one of whole, bowl');
    expect(change({ notes: 'x'.repeat(2001) })?.expected).toBe('a text of 1 to 2000 characters');
    expect(readFormula({ ...file(), notes: 'x'.repeat(2000) }).formula).not.toBeNull();
    const [oats] = full()['fillings'] as object[];
    const filling = (over: object) => change({ fillings: [{ ...oats, ...over }] });
    expect(filling({ group: '' })?.path).toBe('fillings[0].group');
    expect(filling({ soak: { water: 0 } })?.path).toBe('fillings[0].soak.water');
    expect(filling({ soak: 120 })?.path).toBe('fillings[0].soak');
    expect(filling({ brings: { salt: 60, water: 41 } })).toEqual({
      path: 'fillings[0].brings.water',
      expected: 'a number 0 to 40',
      got: '41',
    });
    expect(filling({ from: 'cellar' })?.path).toBe('fillings[0].from');
  });

  it.each(SHIPPED)('reads %s.json whole', (name) => {
    expect(readFormula(rawFormula(name)).formula).toEqual(rawFormula(name));
  });

  it('leaves unknown fields behind', () => {
    expect(readFormula({ ...file(), glaze: true }).formula).toEqual(file());
  });

  it.each<[unknown, string, string, string]>([
    [null, 'the file', 'an object', 'null'],
    [[], 'the file', 'an object', 'a list of 0'],
    ['{', 'the file', 'an object', '"{"'],
  ])('refuses %j as a file', (value, path, expected, got) => {
    expect(readFormula(value).reason).toEqual({ path, expected, got });
  });

  it('names the path, what was expected and what came', () => {
    expect(change({ salt: '2' })).toEqual({
      path: 'salt',
      expected: 'a number 0 to 10',
      got: '"2"',
    });
    expect(change({ version: 1.5 })?.expected).toBe('a whole number 1 to 1000000');
    expect(change({ hydration: undefined })?.got).toBe('nothing');
    expect(change({ flours: [{ id: 'wheat', name: 'w', grain: 'oat', pct: 100 }] })).toEqual({
      path: 'flours[0].grain',
      expected: 'one of wheat, wholeWheat, rye, spelt, barley',
      got: '"oat"',
    });
    expect(change({ flours: [{ id: 'wheat', name: 'w', grain: 'rye', pct: 90 }] })).toEqual({
      path: 'flours',
      expected: 'pct that sum to 100',
      got: 'a sum of 90',
    });
    const twin = { id: 'fig', name: 'figs', pct: 5, keeps: 'shelf', allergens: [] };
    expect(change({ fillings: [twin, twin] })?.path).toBe('fillings[1].id');
    expect(change({ fillings: [{ ...twin, allergens: [7] }] })?.path).toBe(
      'fillings[0].allergens[0]',
    );
    expect(change({ fillings: [{ ...twin, packet: true }] })).toEqual({
      path: 'fillings[0].packet',
      expected: 'one of read',
      got: 'true',
    });
    const wheat = { id: 'wheat', name: 'w', grain: 'wheat', pct: 100 };
    expect(change({ flours: [{ ...wheat, allergens: 'soya' }] })?.path).toBe('flours[0].allergens');
    const process = file()['process'] as object;
    expect(change({ process: { ...process, vessel: 'pan' } })).toEqual({
      path: 'process.vessel',
      expected: 'one of pot, tin, stone',
      got: '"pan"',
    });
    expect(change({ process: { ...process, shaping: undefined } })?.path).toBe('process.shaping');
    expect(change({ process: { ...process, warm: -1 } })?.path).toBe('process.warm');
    expect(change({ name: '   ' })?.path).toBe('name');
    expect(change({ id: 'a b' })?.path).toBe('id');
    const levain = { pff: 0.1, hydration: 1, feed: { seed: 0, flour: 1, water: 1 } };
    expect(change({ levain })?.path).toBe('levain.feed.seed');
  });

  it('never throws, whatever comes, and answers with one of the two', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const { formula, reason } = readFormula(value);
        expect(formula === null).toBe(reason !== undefined);
      }),
    );
  });

  it('never throws when any one place of a good file is changed, and names that place', () => {
    const all = paths(full()).slice(1);
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.anything(), (path, value) => {
        const { formula, reason } = readFormula(replaced(full(), path, value));
        // The levain's flours are named among the formula's: either place may be the wrong one.
        if (formula === null)
          expect(reason.path).toMatch(new RegExp(`^(${path[0]}|levain.flours)`));
        else expect(readFormula(formula).formula).toEqual(formula);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('texts of a formula', () => {
  it('are in one line, and hold nothing that turns or breaks what stands behind them', () => {
    const odd = (name: string) => readFormula({ ...file(), name }).formula?.name;
    expect(odd('\u202ertiw\u202c & rye\u0000\u009b')).toBe('rtiw & rye');
    expect(odd('Lane\r\nwheat\tat\u2028last')).toBe('Lane wheat at last');
    expect(odd('rye \udc4d\ufdd0\ufffe')).toBe('rye ');
    const whole = ['=1+1', '<b>rye</b>', ' ½ süß ', '🥖👨‍👩‍👧', 'خبز\u200f 850', '麦', "'-2"];
    for (const name of whole) expect(odd(name)).toBe(name);
    const notes = 'Good.\r\n\u2066Warm,\tthen cold.\u0007';
    expect(readFormula({ ...file(), notes }).formula?.notes).toBe('Good.\nWarm,\tthen cold.');
  });

  it('that nobody could see are refused, wherever they stand', () => {
    const [filling, ...others] = file()['fillings'] as object[];
    const paths = [
      change({ name: '\u202e \ud83d' }),
      change({ fillings: [{ ...filling, name: '\u0000' }, ...others] }),
      change({ fillings: [{ ...filling, allergens: ['\u2067'] }, ...others] }),
      change({ fillings: [{ ...filling, group: '\ufffe' }, ...others] }),
    ].map((reason) => [reason?.path, reason?.expected]);
    const expected = 'a text that can be seen';
    expect(paths).toEqual([
      ['name', expected],
      ['fillings[0].name', expected],
      ['fillings[0].allergens[0]', expected],
      ['fillings[0].group', expected],
    ]);
  });

  it('are no ids that every object has: a draft or a picture would be found where there is none', () => {
    for (const id of ['constructor', 'toString', 'valueOf', 'hasOwnProperty'])
      expect(change({ id })).toMatchObject({ path: 'id', expected: 'a name of its own' });
    expect(idOf('Constructor', 'bread', new Set())).toBe('constructor-2');
  });
});
