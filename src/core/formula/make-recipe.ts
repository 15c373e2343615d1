import { fitBake } from '../oven/fit-bake.ts';
import type { Grams } from '../units.ts';
import type { Formula } from './formula.ts';
import { formulaWarnings } from './formula-warnings.ts';
import { KEEP_BACK } from './levain-to-make.ts';
import { mixedAmounts } from './mixed-amounts.ts';
import type { Notice } from './notice.ts';
import { processWarnings } from './process-warnings.ts';
import { readFormula } from './read-formula.ts';
import type { Recipe } from './recipe.ts';
import { weighDough } from './weigh-dough.ts';
import { weighFeed } from './weigh-feed.ts';

/** Whole loaves in one bake. Judgement: a home fridge and oven hold no more. */
export const LOAVES = { least: 1, most: 36 } as const;
/** Dough weight of a piece, g. Judgement. */
export const PIECE = { least: 150, most: 2500 } as const;

export type MadeRecipe =
  | { readonly recipe: Recipe; readonly reason?: never }
  | { readonly recipe: null; readonly reason: Notice };

const refuse = (key: string, values: Notice['values']): MadeRecipe => ({
  recipe: null,
  reason: { key, values },
});

/**
 * A formula scaled for one bake: `loaves` whole pieces of `piece` grams of dough, with 2 % process
 * loss on all but a filling that goes in after the bowl (`laterShare`), rounded for the scale, whose
 * steps are `scale` g where that is known. Levain is made for the dough, the starter kept back and 5 %
 * loss.
 *
 * No answer, with a reason: `formulaUnreadable` (path, expected, got), `loavesOutside` and
 * `pieceOutside` (got, least, most), `perishableRetarded` (filling: a perishable filling may not
 * stand in bulk or in the fridge), `waterShort` (short: grams of water that first mix lacks),
 * `levainFlourShort` (flour, and the grams of it that the levain's own mix has too many).
 * Never throws for a baker's numbers. What is merely unusual is in `recipe.warnings`.
 */
export function makeRecipe(
  formula: Formula,
  {
    loaves,
    piece,
    scale = null,
  }: { readonly loaves: number; readonly piece: Grams; readonly scale?: Grams | null },
): MadeRecipe {
  const read = readFormula(formula);
  if (read.formula === null) return refuse('formulaUnreadable', { ...read.reason });
  if (!(Number.isInteger(loaves) && loaves >= LOAVES.least && loaves <= LOAVES.most)) {
    return refuse('loavesOutside', { got: String(loaves), ...LOAVES });
  }
  if (!(piece >= PIECE.least && piece <= PIECE.most)) {
    return refuse('pieceOutside', { got: String(piece), ...PIECE });
  }
  const { process, fillings } = read.formula;
  const perishable = fillings.find(({ keeps }) => keeps === 'perishable');
  const standsLong = process.retard > 0 || process.touches.some((t) => t.kind === 'laminate');
  if (perishable && standsLong) return refuse('perishableRetarded', { filling: perishable.name });

  const exact = mixedAmounts(read.formula, loaves, piece);
  if (exact.firstWater < 0) return refuse('waterShort', { short: Math.ceil(-exact.firstWater) });
  const short = exact.flours.find(({ grams }) => grams < -1e-9);
  if (short) {
    return refuse('levainFlourShort', { flour: short.name, short: Math.ceil(-short.grams) });
  }
  const { lines, dough } = weighDough(exact, scale);
  const fitted = { ...process, ...fitBake(process, read.formula.piece, piece) };
  const warnings = [...formulaWarnings(read.formula, dough), ...processWarnings(fitted)];
  return {
    recipe: {
      formula: read.formula,
      loaves,
      piece,
      lines: { feed: weighFeed(read.formula, exact.levain, KEEP_BACK, scale), ...lines },
      keepBack: KEEP_BACK,
      dough,
      process: fitted,
      warnings,
    },
  };
}
