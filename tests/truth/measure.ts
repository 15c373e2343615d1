import type { Row } from './row.ts';
import { RELATIVE, TOLERANCES, type Model } from './tolerances.ts';

/** Rounding of the last bit is no difference. */
const BIT = 1e-9;

/**
 * How far a row is off, in its model's unit, 0 or more: from the value, or from the nearer end of
 * the range and 0 within it. The one measure of both the tests and the printed table.
 */
export function difference({ model, ours, expected }: Row): number {
  const [least, most] = typeof expected === 'number' ? [expected, expected] : expected;
  const off = Math.max(least - ours, ours - most, 0);
  const counted = RELATIVE.includes(model)
    ? (off / Math.abs(ours < least ? least : most)) * 100
    : off;
  return counted < BIT ? 0 : counted;
}

/** How a model did. */
export interface Score {
  readonly model: Model;
  readonly rows: number;
  readonly most: number;
  readonly mean: number;
  /** Within its tolerance. NaN never is. */
  readonly ok: boolean;
}

/** The score of each model that has rows, in the order of the tolerance table. */
export function scores(rows: readonly Row[]): readonly Score[] {
  return (Object.keys(TOLERANCES) as Model[]).flatMap((model) => {
    const off = rows.filter((row) => row.model === model).map(difference);
    if (off.length === 0) return [];
    const most = Math.max(...off);
    const mean = off.reduce((sum, d) => sum + d, 0) / off.length;
    const ok = most <= TOLERANCES[model].most && mean <= TOLERANCES[model].mean;
    return [{ model, rows: off.length, most, mean, ok }];
  });
}
