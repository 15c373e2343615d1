import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canHeed } from '../../../src/core/log/heeded-in.ts';
import { lastNote } from '../../../src/core/log/last-note.ts';
import type { LoafChange } from '../../../src/core/log/loaf-names.ts';
import type { CutRead } from '../../../src/core/records/cut-read.ts';
import type { Deed, Fact } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { JOINS } from '../../../src/core/records/stage.ts';
import { thisTime } from '../../../src/core/speech/words/last-time.ts';
import { notes } from '../../../src/core/speech/words/note.ts';
import { DAY } from '../../../src/core/units.ts';
import { makeRow } from '../../fakes/records.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

/** A log of such deeds, one a day; the first has the id f0. */
const FROM = Date.UTC(2031, 3, 30, 23);
const log = (deeds: readonly Deed[]): readonly LogRecord[] =>
  deeds.map((deed, n) => {
    const at = FROM + n * DAY;
    const fact = { ...deed, id: `f${n}`, device: 'counter', at, raw: at } as Fact;
    return { ...makeRow(n + 1), fact };
  });
const start = (bake: string, id = 'wheat', version = 1): Deed => ({
  kind: 'start',
  bake,
  loaves: [`${bake}.1`],
  from: 'read.plan',
  recipe: { ...RECIPE, formula: { ...RECIPE.formula, id, version } },
  kitchen: 22,
});
const noted = (who: string, text?: string): Deed => ({
  kind: 'press',
  who,
  act: 'noted',
  ...(text === undefined ? {} : { text }),
});
const ended = (who: string): Deed => ({ kind: 'press', who, act: 'ended' });
const takeBack = (target: string): Deed => ({ kind: 'takeBack', target });
const cut = (target: string, read: Partial<CutRead>): Deed => ({
  kind: 'cut',
  target,
  answers: { crumb: 'tight' },
  read: { says: 'causes', causes: [], change: null, because: [], model: 'test', ...read },
});
const short = { causes: [{ cause: 'short', sure: 'mayBe' }], change: 'warmerDough' } as const;
const NEVER = Number.MAX_SAFE_INTEGER;
const last = (deeds: readonly Deed[], now = NEVER) => lastNote(log(deeds), 'wheat', now);
const UNDER = { from: 'note', was: 'under', change: 'longerBulk' };
const SHORT = { from: 'cut', was: 'short', change: 'warmerDough' };

describe('the one note of the last bake', () => {
  it.each([
    ['nothing was ever baked', [], null],
    ['it runs still', [start('a')], null],
    ['it was put away without a note', [start('a'), noted('a')], null],
    ['it was noted', [start('a'), noted('a', 'under')], UNDER],
    [
      'the one before had a note, this one has none',
      [start('a'), noted('a', 'under'), start('b'), noted('b')],
      null,
    ],
    ['the one after it runs', [start('a'), noted('a', 'under'), start('b', 'wheat', 2)], UNDER],
    [
      'the one after it was cleared away early',
      [start('a'), noted('a', 'under'), start('b'), ended('b')],
      UNDER,
    ],
    [
      'the one after it was of another formula',
      [start('a'), noted('a', 'under'), start('b', 'olive'), noted('b', 'over')],
      UNDER,
    ],
    [
      'another version of it was noted since',
      [start('a'), noted('a', 'under'), start('b', 'wheat', 2), noted('b', 'good')],
      { from: 'note', was: 'good', change: null },
    ],
    [
      'a loaf of it was cut: that stands before the note',
      [start('a'), noted('a', 'over'), cut('f0', short)],
      SHORT,
    ],
    [
      'a loaf of one that was cleared away early was cut',
      [start('a'), noted('a', 'good'), start('b'), ended('b'), cut('f2', short)],
      SHORT,
    ],
    [
      'it was cut twice: the last one stands',
      [start('a'), noted('a', 'over'), cut('f0', short), cut('f0', { says: 'well' })],
      { from: 'cut', was: 'well', change: null },
    ],
    [
      'the cut gave no ground: the note it is',
      [start('a'), noted('a', 'under'), cut('f0', { ...short, change: null })],
      UNDER,
    ],
    [
      'too little was seen of the cut: the note it is',
      [start('a'), noted('a', 'under'), cut('f0', { says: 'look' })],
      UNDER,
    ],
    [
      'a newer program read the cut in its own words',
      [start('a'), noted('a', 'under'), cut('f0', { ...short, change: 'moonlight' as LoafChange })],
      UNDER,
    ],
    ['the cut is of another bake', [start('a'), noted('a', 'under'), cut('f9', short)], UNDER],
    [
      'the cut was taken back',
      [start('a'), noted('a', 'under'), cut('f0', short), takeBack('f2')],
      UNDER,
    ],
    ['the note was taken back', [start('a'), noted('a', 'under'), takeBack('f1')], null],
    [
      'the note was taken back and given again',
      [start('a'), noted('a', 'over'), takeBack('f1'), noted('a', 'under')],
      UNDER,
    ],
    ['its start was taken back', [start('a'), noted('a', 'under'), takeBack('f0')], null],
    [
      'its name came again',
      [start('a'), noted('a', 'under'), start('a', 'olive'), noted('a', 'good')],
      UNDER,
    ],
    [
      'it was noted in own words',
      [start('a'), noted('a', ' Less water. ')],
      { from: 'own', words: 'Less water.' },
    ],
    ['own words are blank', [start('a'), noted('a', '  ')], null],
  ] as const)('where %s', (_, deeds, told) => {
    expect(last(deeds)).toEqual(told);
  });

  it('has a change or the same way for every note there is to press', () => {
    for (const { value } of notes)
      expect(last([start('a'), noted('a', value)]), value).toMatchObject({
        from: 'note',
        was: value,
      });
  });

  it('leaves aside what is later than now', () => {
    const deeds = [start('a'), noted('a', 'under'), start('b'), noted('b', 'over')];
    expect(last(deeds, FROM)).toBeNull();
    for (const days of [1, 2]) expect(last(deeds, FROM + days * DAY)).toEqual(UNDER);
    expect(last(deeds, FROM + 3 * DAY)).toMatchObject({ was: 'over' });
  });

  it('is what it was before a deed that is taken back, whatever came', () => {
    const bake = fc.constantFrom('a', 'b');
    const target = fc.nat({ max: 11 }).map((n) => `f${n}`);
    const deed = fc.oneof(
      fc.tuple(bake, fc.constantFrom('wheat', 'olive')).map(([a, id]) => start(a, id)),
      fc.tuple(bake, fc.constantFrom('under', 'good', 'Mine', '')).map(([a, t]) => noted(a, t)),
      bake.map(ended),
      target.map((id) => cut(id, short)),
      target.map(takeBack),
    );
    let told = 0;
    fc.assert(
      fc.property(fc.array(deed, { minLength: 5, maxLength: 12 }), deed, (deeds, one) => {
        fc.pre(one.kind !== 'takeBack');
        const before = last(deeds);
        if (before !== null) told += 1;
        expect(last([...deeds, one, takeBack(`f${deeds.length}`)])).toEqual(before);
      }),
      { numRuns: 600, seed: 7 },
    );
    expect(told).toBeGreaterThan(40);
  });
});

describe('a change', () => {
  it('can be made by every bake that begins at the beginning', () => {
    for (const change of Object.keys(thisTime) as LoafChange[])
      expect(canHeed(change, 'read.plan'), change).toBe(true);
  });

  it.each([
    ['warmerDough', 'mix.weigh'],
    ['longerBulk', 'bulk.proving'],
    ['tighterSkin', 'shape.divide'],
    ['shorterCold', 'proof.retard'],
    ['coolerOven', 'oven.queued'],
    ['coolLonger', 'oven.queued'],
  ] as const)('%s can be made up to %s of those a bake may join at', (change, until) => {
    const can = JOINS.filter((join) => canHeed(change, join));
    const part = (stage: string) => stage.split('.')[0];
    expect(part(can.at(-1)!)).toBe(part(until));
    expect(can).toEqual(JOINS.slice(0, can.length));
  });
});
