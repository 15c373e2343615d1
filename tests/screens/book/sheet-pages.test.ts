import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { inPages, type BenchList } from '../../../src/screens/book/share/sheet-pages.ts';
import { benchView } from '../../../src/screens/book/share/sheet-view.ts';
import { SHIPPED } from '../../core/formula/shipped.ts';
import { bread } from '../day/breads.ts';

const list = (title: string, count: number, name = title): BenchList => ({
  title,
  lines: Array.from({ length: count }, (_, n) => ({ what: `${name} ${n}`, much: '10 g' })),
});
const steps = list('Steps', 24);
const linesOf = (pages: ReturnType<typeof inPages>): string[] =>
  pages.flatMap(({ columns }) => columns.flat().flatMap((one) => one.lines.map((l) => l.what)));

describe('a sheet that is longer than a page', () => {
  it('has every line once and in its order, two columns a page, and its notes last', () => {
    const lists = [
      list('Feed', 10),
      list('First', 10, 'A long name of a flour that is broken '.repeat(2)),
      list('Filling', 24),
    ];
    const pages = inPages(lists, steps, ['a note']);
    expect(pages.length).toBeGreaterThan(1);
    expect(linesOf(pages)).toEqual(
      [...lists, steps].flatMap(({ lines }) => lines.map((l) => l.what)),
    );
    for (const { columns } of pages) expect(columns.length).toBeLessThanOrEqual(2);
    expect(pages.map(({ notes }) => notes.length)).toEqual([...pages.slice(1).map(() => 0), 1]);
    const titles = pages.flatMap(({ columns }) => columns.flat().map(({ title }) => title));
    expect(titles.filter((title) => title.startsWith('First'))).toEqual([
      'First',
      'First, continued',
    ]);
  });

  it('gives notes that have no room under the last columns a page of their own', () => {
    const many = Array.from({ length: 40 }, (_, n) => `${n} ${'a note of many words '.repeat(6)}`);
    const pages = inPages([list('Feed', 10)], steps, many);
    expect(pages.at(-1)).toEqual({ columns: [], notes: many });
  });

  it('is none of those that come with the program, in one bowl or in several', () => {
    for (const name of SHIPPED)
      for (const loaves of [2, 6, 12]) {
        const formula = bread(name);
        const { recipe } = makeRecipe(formula, { loaves, piece: formula.piece });
        const { pages } = benchView(recipe!, { heat: 'C', weight: 'g' }, 'today');
        expect(pages, `${name}, ${loaves}`).toHaveLength(1);
      }
  });
});
