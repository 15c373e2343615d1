import { prefermented } from '../../src/core/clock/prefermented.ts';
import { bakeLoss } from '../../src/core/formula/bake-loss.ts';
import { fillingShare } from '../../src/core/formula/filling-share.ts';
import { percentOf } from '../../src/core/formula/live-percent.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import { lossOf } from '../../src/core/oven/bake-loss-learned.ts';
import { pieceForBread } from '../../src/core/formula/piece-for-bread.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { fileRows } from './formula-files.ts';
import { rowsOf, type Row } from './row.ts';

/** Sums of flour that need no formula. */
function flour(): Row[] {
  const own = rowsOf('formula', 'port', 'worked by hand, baker’s percentage');
  return [
    own('1000 flour + 200 levain: PFF, %', prefermented(20, 100) * 100, 9.1),
    own('18 % of levain to the other flour: PFF, %', prefermented(18, 100) * 100, 8.257),
    own('15 g of 600 g, printed 3 %', percentOf(15, 600), 2.5),
  ];
}

/** What comes off the scale against the dough wanted, g. */
function scaled(): Row[] {
  const row = rowsOf('scale of a formula', 'port', 'n·unit/(1 − 2 %); Rumford measured 2.03 %');
  // A piece is 28/204.9 filling, of which bowl and hands keep nothing: 777.0/.98 + 123.0 g.
  const filled = { source: 'n·(dough/(1 − 2 %) + filling), worked by hand' };
  const off = (name: 'cherry-hazelnut' | 'lane-wheat', loaves: number): number =>
    makeRecipe(shippedFormula(name), { loaves, piece: 900 }).recipe?.dough ?? NaN;
  return [
    row(
      '24 × 900 g of cherry and hazelnut, off the scale, g',
      off('cherry-hazelnut', 24),
      21_980.6,
      filled,
    ),
    row('2 × 900 g of it, g', off('cherry-hazelnut', 2), 1831.7, filled),
    row('24 × 900 g of lane wheat, g', off('lane-wheat', 24), 22_040.8),
    row('3 × 900 g of it, g', off('lane-wheat', 3), 2755.1),
  ];
}

/** Losses and shares of usage. */
function usage(): Row[] {
  const loss = rowsOf('formula', 'practice', 'common practice, no source');
  const sfbi = 'San Francisco Baking Institute, sfbi.com/inclusions-in-bread.html';
  return [
    loss('loss in the oven up to 400 g, %', bakeLoss(380) * 100, 16),
    loss('at 900 g, %', bakeLoss(900) * 100, 13),
    loss('at 1.2 kg, %', bakeLoss(1200) * 100, 11),
    loss('dough for 783 g of bread, g', pieceForBread(783), 900),
    loss(
      '900 g that came out at 765 g once, %',
      lossOf(900, [{ dough: 900, loaf: 765 }]).mean * 100,
      14.28,
      {
        mark: 'port',
        source: 'N(.13, .02²) weighed with .15 ± .015, worked by hand',
      },
    ),
    loss(
      'cherry and hazelnut: filling in the dough, %',
      fillingShare(shippedFormula('cherry-hazelnut')) * 100,
      [10, 20],
      { mark: 'outside', source: sfbi },
    ),
  ];
}

export const formulaRows = (): Row[] => [...fileRows(), ...flour(), ...scaled(), ...usage()];
