/** A sheet of dough is spread about this much wider than deep. Judgement. */
const WIDE = 3 / 2;
/** A cell longer than this is no help to scatter by: then rows need not all hold as many. Judgement. */
const LONGEST = 2;

/** How many times longer than wide the cells of `rows` even rows are, 1 or more. */
const stretch = (loaves: number, rows: number): number => {
  const ratio = (WIDE * rows * rows) / loaves;
  return Math.max(ratio, 1 / ratio);
};

/**
 * A sheet of dough cut into as many cells as loaves: how many cells each row holds, the fuller rows
 * first. Rows are even where that gives cells of a fair shape, else they differ by one; drawn with
 * a depth that follows their count, every cell has the same area.
 *
 * @param loaves whole, 1 or more
 * @example
 * sheetRows(24) // → [6, 6, 6, 6]
 * sheetRows(7) // → [4, 3]
 */
export function sheetRows(loaves: number): readonly number[] {
  const counts = Array.from({ length: loaves }, (_, i) => i + 1);
  // Of two shapes as good, the wider cells: what stands in them is lines of words.
  const byShape = (rows: readonly number[]): number =>
    rows.reduce((best, n) => (stretch(loaves, n) <= stretch(loaves, best) + 1e-9 ? n : best));
  const even = byShape(counts.filter((n) => loaves % n === 0));
  const rows = stretch(loaves, even) <= LONGEST ? even : byShape(counts);
  return Array.from(
    { length: rows },
    (_, i) => Math.floor(loaves / rows) + (i < loaves % rows ? 1 : 0),
  );
}
