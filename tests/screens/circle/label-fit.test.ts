import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LABEL_PAPERS } from '../../../src/core/circle/circle.ts';
import {
  fitLabel,
  labelPages,
  ROLL_LENGTHS,
  ROLL_RIM,
  X_HEIGHTS,
  type Measure,
} from '../../../src/screens/circle/labels/fit.ts';

/** So many letters, each a square of 1 em, in even lines. */
const letters =
  (count: number): Measure =>
  (width, em) =>
    (Math.ceil((count * em) / width) + 1) * em;

/** The width of one label on a whole page, with the smallest letters; and its room. */
const ALL = { a4: 186, letter: 191.9, roll: 56 } as const;
const ROOM = { a4: 272, letter: 254.4, roll: 294 } as const;

describe('a label on its paper', () => {
  it('stands eight to a sheet with large letters where it is short', () => {
    for (const paper of ['a4', 'letter'] as const)
      expect(fitLabel(paper, letters(100))).toMatchObject({ columns: 2, rows: 4, em: 3.4 });
  });

  it('has smaller letters before there are fewer to a sheet, and none too small ever', () => {
    const seen = [300, 450, 700, 900, 1500, 3000, 6000].map((count) => {
      const { columns, rows, em } = fitLabel('a4', letters(count))!;
      return [columns * rows, em];
    });
    expect(seen[0]).toEqual([8, 3.4]);
    expect(seen.map(([many]) => many)).toEqual(
      seen.map(([many]) => many).toSorted((a, b) => b! - a!),
    );
    for (const [, em] of seen) expect(em! * 0.5).toBeGreaterThanOrEqual(1.2);
    expect(Math.min(...X_HEIGHTS)).toBe(1.2);
  });

  it('is as long as it has to be on a roll', () => {
    expect(fitLabel('roll', letters(60))).toMatchObject({ width: 56, height: 54 });
    const long = fitLabel('roll', letters(2000))!;
    expect(long.em).toBe(2.4);
    expect(ROLL_LENGTHS).toContain(long.height + ROLL_RIM);
  });

  it('is never higher than its place; where there is none, that is said', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LABEL_PAPERS),
        fc.integer({ min: 1, max: 40_000 }),
        (paper, count) => {
          const fit = fitLabel(paper, letters(count));
          if (fit === null) expect(letters(count)(ALL[paper], 2.4)).toBeGreaterThan(ROOM[paper]);
          else expect(letters(count)(fit.width, fit.em)).toBeLessThanOrEqual(fit.height);
        },
      ),
    );
    for (const paper of LABEL_PAPERS) expect(fitLabel(paper, letters(1e6))).toBeNull();
  });

  it('stays inside the margins of a page', () => {
    for (const [paper, width, height] of [
      ['a4', 186, 273],
      ['letter', 191.9, 255.4],
    ] as const)
      for (const count of [100, 900, 1500, 3000, 6000]) {
        const fit = fitLabel(paper, letters(count))!;
        expect(fit.columns * fit.width + (fit.columns - 1) * 4).toBeLessThanOrEqual(width);
        expect(fit.rows * fit.height + (fit.rows - 1) * 3).toBeLessThan(height);
      }
  });
});

describe('pages of labels', () => {
  const label = (count: number) => ({ count, fit: fitLabel('a4', letters(count))! });

  it('has as many pages as it takes, all of them full but the last', () => {
    const pages = labelPages(Array.from({ length: 19 }, () => label(100)));
    expect(pages.map(({ labels }) => labels.length)).toEqual([8, 8, 3]);
  });

  it('puts long ones on a page of their own, and loses none', () => {
    const all = [100, 3000, 100, 3000, 300].map(label);
    const pages = labelPages(all);
    expect(pages.map(({ labels }) => labels.map(({ count }) => count))).toEqual([
      [100, 100, 300],
      [3000, 3000],
    ]);
  });
});
