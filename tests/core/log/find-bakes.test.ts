import { describe, expect, it } from 'vitest';
import { NOTHING_SAID, type About } from '../../../src/core/log/about.ts';
import { makeBakeList, type ListedBake } from '../../../src/core/log/bake-list.ts';
import { choicesOf, findBakes, type BakeQuery } from '../../../src/core/log/find-bakes.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import { back, begun, noted, rowsOf } from './support/log-rows.ts';

const listed = (...deeds: readonly Deed[]) => makeBakeList()(rowsOf(deeds)).bakes;
const about = (said: Partial<About>): About => ({ ...NOTHING_SAID, at: 0, ...said });
const names = (bakes: readonly ListedBake[]) => bakes.map(({ bake }) => bake);
const monthOf = ({ at }: ListedBake) => new Date(at).toISOString().slice(0, 7);

const bakes = listed(
  begun('a', 'Crème and rye'),
  noted('a', 'Sprang up, next time less water'),
  begun('b', 'Lane wheat'),
  noted('b', 'pale'),
  begun('c', 'Rye tin'),
);
const abouts = {
  f0: about({ tags: ['gift', 'Über the hill'], note: 'Zoë’s wedding' }),
  f2: about({ hidden: true, tags: ['gift'] }),
};
const find = (query: BakeQuery, said: Readonly<Record<string, About>> = {}) =>
  names(
    findBakes(bakes, query, {
      abouts: said,
      tagName: (tag) => (tag === 'gift' ? 'For a gift' : tag),
      monthOf,
    }),
  );

describe('a search', () => {
  it('finds words of name and note in any order, whatever their accents and capitals', () => {
    expect(find({ text: 'RYE' })).toEqual(['c', 'a']);
    expect(find({ text: ' water creme ' })).toEqual(['a']);
    expect(find({ text: 'too pale' })).toEqual(['b']);
    expect(find({ text: 'rye pale' })).toEqual([]);
  });

  it('finds what was said of a bake, and its tags as they are read', () => {
    expect(find({ text: 'zoe' }, abouts)).toEqual(['a']);
    expect(find({ text: 'uber' }, abouts)).toEqual(['a']);
    expect(find({ text: 'gift' }, abouts)).toEqual(['a']);
    expect(find({ text: 'zoe rye less' }, abouts)).toEqual(['a']);
    expect(find({ text: 'zoe' })).toEqual([]);
  });

  it('finds by month, bread, tag and how it turned out, and by all of them', () => {
    expect(find({ month: '2031-04' })).toEqual(['a']);
    expect(find({ formula: 'Rye tin' })).toEqual(['c']);
    expect(find({ turned: 'pale' })).toEqual(['b']);
    expect(find({ tag: 'gift', hidden: true }, abouts)).toEqual(['b', 'a']);
    expect(find({ tag: 'Gift', hidden: true }, abouts)).toEqual([]);
    expect(find({ month: '2031-05', turned: 'open', text: 'tin' })).toEqual(['c']);
    expect(find({ month: '2031-05', turned: 'open', text: 'wheat' })).toEqual([]);
  });

  it('leaves out what is hidden unless that is wanted too', () => {
    expect(find({}, abouts)).toEqual(['c', 'a']);
    expect(find({ hidden: true }, abouts)).toEqual(['c', 'b', 'a']);
  });

  it('hands back the very list where nothing is left out', () => {
    const beside = { abouts: {}, tagName: (tag: string) => tag, monthOf };
    expect(findBakes(bakes, {}, beside)).toBe(bakes);
    expect(findBakes(bakes, { text: '  ' }, beside)).toBe(bakes);
  });

  it('knows no bake by a name that every object has', () => {
    const odd = rowsOf([begun('a')]).map((row) => ({
      ...row,
      fact: { ...row.fact, id: 'constructor' },
    }));
    const beside = { abouts: {}, tagName: (tag: string) => tag, monthOf };
    expect(findBakes(makeBakeList()(odd).bakes, { tag: 'gift' }, beside)).toEqual([]);
  });

  it('goes through five thousand bakes between two strokes of a key', () => {
    const many = Array.from({ length: 5_000 }, (_, n) => [
      begun(`b${n}`, n % 2 === 0 ? 'Cherry and hazelnut' : 'Lane wheat'),
      noted(`b${n}`, `Fold ${n} went well, less water next time`),
    ]).flat();
    const all = listed(...many);
    const beside = { abouts: {}, tagName: (tag: string) => tag, monthOf };
    const runs = Array.from({ length: 5 }, () => {
      const began = performance.now();
      expect(findBakes(all, { text: 'water 4999' }, beside)).toHaveLength(1);
      return performance.now() - began;
    });
    // The best of five: the others may have met a busy machine.
    expect(Math.min(...runs)).toBeLessThan(20);
  });
});

describe('what may be chosen', () => {
  it('is what bakes have, with how many of each, the latest first', () => {
    expect(choicesOf(bakes, (one) => [monthOf(one)])).toEqual([
      { value: '2031-05', count: 2 },
      { value: '2031-04', count: 1 },
    ]);
    expect(choicesOf(listed(begun('a'), back('f0')), ({ turned }) => [turned])).toEqual([]);
  });
});
