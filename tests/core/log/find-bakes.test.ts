import { describe, expect, it } from 'vitest';
import { findBakes, listBakes, monthsOf } from '../../../src/core/log/find-bakes.ts';
import type { Deed, Fact } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { DAY } from '../../../src/core/units.ts';
import { makeRow } from '../../fakes/records.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

/** A log of such deeds, one a day from 30 April 2031, 23:00 UTC. */
const FROM = Date.UTC(2031, 3, 30, 23);
const log = (deeds: readonly Deed[]): readonly LogRecord[] =>
  deeds.map((deed, n) => {
    const at = FROM + n * DAY;
    const fact = { ...deed, id: `f${n}`, device: 'counter', at, raw: at } as Fact;
    return { ...makeRow(n + 1), fact };
  });
const start = (bake: string, name: string): Deed => ({
  kind: 'start',
  bake,
  loaves: [`${bake}.1`],
  from: 'read.plan',
  recipe: { ...RECIPE, formula: { ...RECIPE.formula, name } },
  kitchen: 22,
});
const noted = (who: string, text?: string): Deed => ({
  kind: 'press',
  who,
  act: 'noted',
  ...(text === undefined ? {} : { text }),
});
const listed = (deeds: readonly Deed[], zone = 'UTC') => listBakes(log(deeds), zone);
const names = (bakes: readonly { readonly bake: string }[]) => bakes.map(({ bake }) => bake);

describe('the list of bakes', () => {
  it('has the latest begun first, with its end and its note as it is read', () => {
    const bakes = listed([
      start('a', 'Lane wheat'),
      noted('a', 'dark'),
      start('b', 'Barley tin'),
      start('c', 'Olive and seed'),
      { kind: 'press', who: 'c', act: 'ended' },
    ]);
    expect(bakes.map(({ bake, to, note }) => [bake, to === null, note])).toEqual([
      ['c', false, null],
      ['b', true, null],
      ['a', false, 'Crust too dark'],
    ]);
  });

  it('has nothing that was taken back: no start, no end, no note', () => {
    const bakes = listed([
      start('a', 'Lane wheat'),
      noted('a', 'good'),
      { kind: 'takeBack', target: 'f1' },
      start('b', 'Barley tin'),
      { kind: 'takeBack', target: 'f3' },
    ]);
    expect(bakes.map(({ bake, to, note }) => [bake, to, note])).toEqual([['a', null, null]]);
  });

  it('tells two bakes of one name apart', () => {
    const bakes = listed([start('a', 'Lane wheat'), noted('a', 'good'), start('a', 'Barley tin')]);
    expect(bakes.map(({ start: id, note }) => [id, note])).toEqual([
      ['f2', null],
      ['f0', 'It was good'],
    ]);
  });

  it('counts a month by the wall of the kitchen', () => {
    const deeds = [start('a', 'Lane wheat'), ...Array(40).fill(noted('x')), start('b', 'Tin')];
    expect(monthsOf(listed(deeds))).toEqual(['2031-06', '2031-04']);
    expect(monthsOf(listed(deeds, 'Europe/Berlin'))).toEqual(['2031-06', '2031-05']);
  });
});

describe('a search', () => {
  const bakes = listed([
    start('a', 'Crème and rye'),
    noted('a', 'Sprang up, next time less water'),
    start('b', 'Lane wheat'),
    noted('b', 'pale'),
    start('c', 'Rye tin'),
  ]);

  it('finds words of name and note in any order, whatever their accents and capitals', () => {
    expect(names(findBakes(bakes, { text: 'RYE' }))).toEqual(['c', 'a']);
    expect(names(findBakes(bakes, { text: ' water creme ' }))).toEqual(['a']);
    expect(names(findBakes(bakes, { text: 'too pale' }))).toEqual(['b']);
    expect(findBakes(bakes, { text: 'rye pale' })).toEqual([]);
  });

  it('finds all where nothing is looked for, and those of a month', () => {
    expect(findBakes(bakes, {})).toEqual(bakes);
    expect(findBakes(bakes, { text: '  ' })).toEqual(bakes);
    expect(names(findBakes(bakes, { month: '2031-04' }))).toEqual(['a']);
    expect(findBakes(bakes, { month: '2031-04', text: 'tin' })).toEqual([]);
  });

  it('goes through five thousand bakes between two strokes of a key', () => {
    const many = Array.from({ length: 5_000 }, (_, n) => [
      start(`b${n}`, n % 2 === 0 ? 'Cherry and hazelnut' : 'Lane wheat'),
      noted(`b${n}`, `Fold ${n} went well, less water next time`),
    ]).flat();
    const all = listed(many);
    const runs = Array.from({ length: 5 }, () => {
      const began = performance.now();
      expect(findBakes(all, { text: 'water 4999' })).toHaveLength(1);
      return performance.now() - began;
    });
    // The best of five: the others may have met a busy machine.
    expect(Math.min(...runs)).toBeLessThan(20);
  });
});
