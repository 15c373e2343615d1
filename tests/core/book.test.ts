import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../src/core/formula/formula.ts';
import { bookOf, freeId, nextVersion } from '../../src/core/records/book.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { formulaFault } from '../../src/core/records/formula-fault.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { HOUR } from '../../src/core/units.ts';
import { makeRow } from '../fakes/records.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { SHIPPED as NAMES, shippedFormula } from './formula/shipped.ts';

const SHIPPED = NAMES.map(shippedFormula);
const [WHEAT] = SHIPPED.filter(({ id }) => id === 'lane-wheat') as [Formula];
const FROM = Date.UTC(2031, 4, 3, 6);

/** Rows of so many deeds; the n-th fact's id is `f<n>`, from 1, an hour after the one before. */
const rows = (...deeds: readonly Deed[]): LogRecord[] =>
  deeds.map((deed, i) => {
    const at = FROM + i * HOUR;
    return { ...makeRow(i + 1), fact: { ...deed, id: `f${i + 1}`, device: 'd', at, raw: at } };
  });
const kept = (change: Partial<Formula>): Deed => ({
  kind: 'formula',
  formula: { ...WHEAT, ...change },
});
const off = (formula: string): Deed => ({ kind: 'formulaOff', formula });
const start = (formula: Formula): Deed => ({
  kind: 'start',
  bake: 'bake-2',
  loaves: ['a'],
  from: 'levain.feed',
  recipe: { ...RECIPE, formula },
  kitchen: 22,
});
const wheatOf = (...deeds: readonly Deed[]) =>
  bookOf(rows(...deeds), SHIPPED).find(({ id }) => id === WHEAT.id)!;

describe('the Book', () => {
  it('begins with what came with the program, each once and never baked', () => {
    const book = bookOf([], SHIPPED);
    expect(book.map(({ id }) => id)).toEqual(SHIPPED.map(({ id }) => id));
    for (const { latest, versions, ...rest } of book) {
      expect(versions).toEqual([{ formula: latest, at: null }]);
      expect(rest).toMatchObject({ off: false, shipped: true, baked: null });
    }
  });

  it('has the latest version in front and keeps every one before it', () => {
    const wheat = wheatOf(kept({ version: 2, salt: 1.7 }), kept({ version: 3, salt: 1.8 }));
    expect(wheat.latest).toMatchObject({ version: 3, salt: 1.8 });
    expect(wheat.versions.map(({ formula, at }) => [formula.version, formula.salt, at])).toEqual([
      [1, WHEAT.salt, null],
      [2, 1.7, FROM],
      [3, 1.8, FROM + HOUR],
    ]);
    expect(nextVersion(wheat)).toBe(4);
  });

  it('keeps both of two that came with one number, the later in front', () => {
    const wheat = wheatOf(kept({ version: 2, salt: 1.7 }), kept({ version: 2, salt: 1.8 }));
    expect(wheat.versions.map(({ formula }) => formula.salt)).toEqual([WHEAT.salt, 1.7, 1.8]);
    expect(wheat.latest.salt).toBe(1.8);
    expect(nextVersion(wheat)).toBe(3);
  });

  it('has copies of the baker’s own behind the others, under their own ids', () => {
    const book = bookOf(rows(kept({ id: 'lane-wheat-2', name: 'Evening wheat' })), SHIPPED);
    const own = book.at(-1)!;
    expect(own).toMatchObject({ id: 'lane-wheat-2', shipped: false });
    expect(own.latest.name).toBe('Evening wheat');
    expect(book.find(({ id }) => id === WHEAT.id)!.versions).toHaveLength(1);
  });

  it('takes one off its list and has it back with its next version, all versions kept', () => {
    expect(wheatOf(off(WHEAT.id))).toMatchObject({ off: true, latest: WHEAT });
    const back = wheatOf(kept({ version: 2 }), off(WHEAT.id), kept({ version: 3 }));
    expect(back).toMatchObject({ off: false });
    expect(back.versions).toHaveLength(3);
    expect(bookOf(rows(off('nothing')), SHIPPED)).toEqual(bookOf([], SHIPPED));
  });

  it('knows when it was baked last, and in which version, but for a start that was taken back', () => {
    const second = { ...WHEAT, version: 2 };
    expect(wheatOf(start(WHEAT), kept({ version: 2 })).baked).toEqual({ at: FROM, version: 1 });
    expect(wheatOf(start(WHEAT), kept({ version: 2 }), start(second)).baked?.version).toBe(2);
    const taken: Deed = { kind: 'takeBack', target: 'f1' };
    expect(wheatOf(start(WHEAT), taken).baked).toBeNull();
  });

  it('keeps a version that only a start knows, in the place of its number', () => {
    const newer = SHIPPED.map((one) => (one.id === WHEAT.id ? { ...one, version: 2 } : one));
    const book = bookOf(rows(start(WHEAT)), newer).find(({ id }) => id === WHEAT.id)!;
    expect(book.versions.map(({ formula }) => formula.version)).toEqual([1, 2]);
    expect(book.latest.version).toBe(2);
    // What a start of long ago pinned and this program cannot read is no version.
    const odd = { ...WHEAT, version: 7, salt: 99 };
    expect(bookOf(rows(start(odd)), SHIPPED).find(({ id }) => id === WHEAT.id)!.versions).toEqual([
      { formula: WHEAT, at: null },
    ]);
  });

  it('finds an id that no other has, out of any name', () => {
    const book = [{ id: 'lane-wheat' }, { id: 'lane-wheat-2' }, { id: 'bread' }];
    expect(freeId('Lane wheat', book)).toBe('lane-wheat-3');
    expect(freeId('Crème & Öl', book)).toBe('creme-ol');
    expect(freeId('…', book)).toBe('bread-2');
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (name) => {
        expect(freeId(name, book)).toMatch(/^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/);
      }),
    );
  });
});

describe('reading a formula of the log', () => {
  const row = (fact: object) => ({
    ...makeRow(1),
    fact: { id: 'x', device: 'd', at: FROM, raw: FROM, ...fact },
  });
  const read = (fact: object) => readRecord(row(fact), 10);

  it('takes one that was kept, and one that is taken off', () => {
    expect(read({ kind: 'formula', formula: WHEAT }).record).not.toBeNull();
    expect(read({ kind: 'formulaOff', formula: WHEAT.id }).record).not.toBeNull();
  });

  it.each([
    ['fact.formula', undefined],
    ['fact.formula', 'bread'],
    ['fact.formula', []],
    ['fact.formula.version', { ...WHEAT, version: 0 }],
    ['fact.formula.name', { ...WHEAT, name: ' ' }],
    ['fact.formula.flours', { ...WHEAT, flours: [{ ...WHEAT.flours[0], pct: 40 }] }],
    ['fact.formula.process.touches[0].kind', { ...WHEAT, process: odd() }],
  ])('names %s where it is wrong', (path, formula) => {
    const { record, reason } = { reason: null, ...read({ kind: 'formula', formula }) };
    expect(record).toBeNull();
    expect(reason).toMatchObject({ path });
    expect(reason!.expected).not.toBe('');
  });

  it('refuses a formula taken off without a name', () => {
    expect(read({ kind: 'formulaOff', formula: 4 })).toMatchObject({
      reason: { path: 'fact.formula', expected: 'a string', got: '4' },
    });
  });

  it('never throws, whatever comes', () => {
    fc.assert(fc.property(fc.anything(), (value) => void formulaFault(value)));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(WHEAT)), fc.anything(), (key, value) => {
        formulaFault({ ...WHEAT, [key]: value });
      }),
    );
  });
});

function odd(): object {
  return { ...WHEAT.process, touches: [{ kind: 'knead', after: 30 }] };
}
