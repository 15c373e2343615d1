import { baseAmounts } from '../../src/core/circle/base-dough.ts';
import { mixedAmounts } from '../../src/core/formula/mixed-amounts.ts';
import { pieceForBread } from '../../src/core/formula/piece-for-bread.ts';
import { figBread, plainBread } from '../core/circle/support/same-dough-breads.ts';
import { rowsOf, type Row } from './row.ts';

/** In this oven, of dough and filling alike. */
const LOSS = 0.13;

/**
 * One dough for two breads. By hand: 8 × 700/.87 = 6436.8 g and 4 × 800/.87 = 3678.2 g of pieces; the
 * filled ones are 3678.2/1.18 = 3117.1 g of dough and 561.1 g of filling; dough 9553.9/.98 = 9748.8 g;
 * flour in the bowl 9748.8/1.92 = 5077.5 g, and of that 72, 18 and 2 %.
 */
export function baseDoughRows(): Row[] {
  const row = rowsOf(
    'formula',
    'port',
    'arithmetic worked by hand; 13 % in the oven, 2 % in the bowl',
  );
  const piece = (bread: number): number => pieceForBread(bread, () => LOSS);
  const base = baseAmounts([
    { formula: plainBread, loaves: 8, piece: piece(700) },
    { formula: figBread, loaves: 4, piece: piece(800) },
  ]);
  const flour = base.flours.reduce((sum, { grams }) => sum + grams, 0);
  const filled = mixedAmounts(figBread, 4, piece(800));
  const filling = filled.fillings[0]!.grams;
  return [
    row('8 plain of 700 g and 4 filled of 800 g: dough to mix, g', base.dough, 9748.8),
    row('flour in the bowl, g', flour, 5077.5),
    row('water in the bowl, g', base.finalWater, 3655.8),
    row('levain, g', base.levain, 913.9),
    row('salt, g', base.salt, 101.55),
    row('filling, none of which stays in the bowl, g', filling, 561.1),
    row('of the filled alone: dough to mix, g', filled.dough - filling, 3180.7),
  ];
}
