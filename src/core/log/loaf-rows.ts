import type { LoafSign, Shown } from './loaf-names.ts';
import { remedyFor, type Remedy } from './remedies.ts';

/** The row of the remedies that a sign of a cut loaf belongs to, by sign and what it shows. */
const ROWS: Readonly<Partial<Record<`${LoafSign} ${Shown}`, readonly [string, string]>>> = {
  'crumb gummy': ['cut', 'gummy'],
  'crumb tight': ['cut', 'dense'],
  'crumb bigHoles': ['cut', 'dense'],
  'crumb streaks': ['cut', 'streaks'],
  'holes underCrust': ['cut', 'flyingCrust'],
  'holes byFilling': ['sheet', 'wet'],
  'spread burst': ['oven', 'burst'],
  'spread spread': ['oven', 'flat'],
  'base dark': ['oven', 'black'],
  'crust pale': ['oven', 'pale'],
  'crust dark': ['oven', 'dark'],
};

/**
 * The rows of the remedies that signs of a cut loaf belong to, each once, in their order.
 *
 * @example
 * rowsFor([['crumb', 'gummy'], ['spread', 'tall']]).map((row) => row.sign) // → ['gummy']
 */
export const rowsFor = (signs: readonly (readonly [LoafSign, Shown])[]): readonly Remedy[] => [
  ...new Set(
    signs.flatMap(([sign, shown]) => {
      const at = ROWS[`${sign} ${shown}`];
      const row = at === undefined ? null : remedyFor(...at);
      return row === null ? [] : [row];
    }),
  ),
];
