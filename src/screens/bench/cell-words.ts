import { cellShares } from '../../core/formula/cell-shares.ts';
import { goesIn } from '../../core/formula/goes-in.ts';
import type { WeighLine } from '../../core/formula/recipe.ts';
import { fill } from '../../core/speech/fill.ts';
import { toldLine } from '../../core/speech/tell-line.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { sheet } from '../../core/speech/words/sheet.ts';
import type { Units } from '../../core/units.ts';

/** What of one filling goes on the cells of the sheet. */
export interface CellShares {
  readonly item: string;
  /** Of each cell. */
  readonly cells: readonly string[];
  /** The same in words: what each gets, or the least and the most. */
  readonly told: string;
}

/** Each filling as it goes in, with its share of every cell: one cell a loaf. */
export const cellWords = (
  lines: readonly WeighLine[],
  count: number,
  units: Units,
): readonly CellShares[] =>
  goesIn(lines).map((line) => {
    const { item, name } = toldLine(line);
    const shares = cellShares(line, count);
    const [least, most] = [Math.min(...shares), Math.max(...shares)].map((g) =>
      showWeight(g, units),
    );
    return {
      item,
      cells: shares.map((grams) => showWeight(grams, units)),
      told:
        least === most
          ? fill(sheet.share, { got: most!, name })
          : fill(sheet.between, { least: least!, most: most!, name }),
    };
  });
