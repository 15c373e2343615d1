import type { Order } from '../../../core/circle/circle.ts';
import type { Grams } from '../../../core/units.ts';

/** Loaves of one bread and one kind that get the same label, but for the name on it. */
export interface LabelRow {
  readonly key: string;
  readonly bread: string;
  readonly grams: Grams | null;
  readonly cut: boolean;
  /** Whose each ordered loaf is, in the order in which they are fetched; none where nobody ordered. */
  readonly whos: readonly string[];
}

/** At most so many labels of one kind: no home oven fills more. Judgement. */
export const MOST_LABELS = 60;

/**
 * One label a loaf that is ordered, kind by kind.
 *
 * @param orders of one day
 */
export function labelRows(orders: readonly Order[]): readonly LabelRow[] {
  const rows = new Map<string, LabelRow & { whos: string[] }>();
  for (const { who, lines } of orders)
    for (const { bread, grams, cut, count } of lines) {
      const key = JSON.stringify([bread, grams, cut]);
      const row = rows.get(key) ?? { key, bread, grams, cut, whos: [] };
      rows.set(key, row);
      row.whos.push(...Array.from({ length: count }, () => who));
    }
  return [...rows.values()].filter(({ whos }) => whos.length > 0);
}

/** A bread that nobody ordered, or as well. */
export const oneBread = (bread: string): LabelRow => ({
  ...{ key: bread, bread, grams: null, cut: false, whos: [] },
});

/** Whose each of so many labels is; null: nobody's, or more than were ordered. */
export const whosFor = ({ whos }: LabelRow, count: number): readonly (string | null)[] =>
  Array.from({ length: count }, (_, i) => whos[i] ?? null);
