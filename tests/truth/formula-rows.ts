import { prefermented } from '../../src/core/clock/prefermented.ts';
import { amounts } from '../../src/core/formula/amounts.ts';
import { bakeLoss } from '../../src/core/formula/bake-loss.ts';
import { doughToMix } from '../../src/core/formula/dough-to-mix.ts';
import { fillingShare } from '../../src/core/formula/filling-share.ts';
import type { Filling, Formula } from '../../src/core/formula/formula.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import { lossOf } from '../../src/core/oven/bake-loss-learned.ts';
import { pieceForBread } from '../../src/core/formula/piece-for-bread.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { rowsOf, type Row } from './row.ts';

/** A plain formula in the true convention; `other` is all that is neither flour, water nor salt. */
const sheet = (
  hydration: number,
  salt: number,
  { pff = 0, levainHydration = 1, other = 0, secondWater = 0 } = {},
): Formula => {
  const plain = shippedFormula('lane-wheat');
  const rest: Filling = { id: 'other', name: 'other', pct: other, keeps: 'shelf', allergens: [] };
  return {
    ...plain,
    hydration,
    salt,
    secondWater,
    levain: { ...plain.levain, pff, hydration: levainHydration },
    fillings: other > 0 ? [rest] : [],
  };
};

/** Sheets worked by others, through the same arithmetic that makes a recipe. */
function sheets(): Row[] {
  const worksheet = rowsOf('formula', 'outside', 'Baker’s math worksheet, scribd 79999339');
  const rolls = amounts(sheet(67, 2, { other: 1 }), doughToMix(73, 390, 0));
  const gisslen = rowsOf('formula', 'outside', 'Gisslen');
  const forkish = rowsOf('formula', 'outside', 'Forkish, p. 197');
  const country = amounts(sheet(78, 0, { pff: 0.2, levainHydration: 0.8 }), 1780);
  const miche = rowsOf('formula', 'outside', 'Harpoon miche, bakemag.com/articles/10808');
  const beer = amounts(sheet(50, 2, { pff: 0.21, other: 31.2 }), 18_900);
  const fci = rowsOf('formula', 'outside', 'FCI');
  const stiff = amounts(sheet(70, 0, { pff: 156.25 / 950, levainHydration: 0.6 }), 950 * 1.7);
  const own = rowsOf('formula', 'port', 'worked by hand, baker’s percentage');
  const circle = amounts(sheet(72, 2, { pff: 0.1 }), doughToMix(24, 900));
  return [
    worksheet('73 × 390 g: dough, g', rolls.dough, 28_470),
    worksheet('100/67/2/1 %: flour, g', rolls.totalFlour, 16_747.06),
    worksheet('its water, g', rolls.finalWater, 11_220.5),
    worksheet('its salt, g', rolls.salt, 334.94),
    gisslen('3000 g at 377.5 %: flour, g', amounts(sheet(275.5, 2), 3000).totalFlour, 794.7),
    forkish('78 %, PFF 20 %, levain at 80 %: levain, g', country.levain, 360),
    forkish('its flour in the bowl, g', country.totalFlour - country.levainFlour, 800),
    forkish('its water in the bowl, g', country.finalWater, 620),
    miche('18.90 kg at 183.2 %: flour, g', beer.totalFlour, 8253 + 1547 + 516),
    miche(
      'its water and beer, g',
      beer.finalWater + beer.levainWater + 0.3 * beer.totalFlour,
      5158 + 3095,
    ),
    miche('PFF 21.0 %: levain and sour flour, g', beer.levainFlour, 1032 + 1135),
    fci('250 g of levain at 60 %: its flour, g', stiff.levainFlour, 156.25),
    fci(
      'its share of all flour, printed 16.4 %',
      (stiff.levainFlour / stiff.totalFlour) * 100,
      [16.35, 16.45],
    ),
    own('24 × 900 g with 2 % loss: dough, g', circle.dough, 22_040.8),
    own('100/72/2, PFF 10 %: flour, g', circle.totalFlour, 12_667.1),
    own('its levain, g', circle.levain, 2533.4),
    own('its final water, g', circle.finalWater, 7853.6),
    own('1000 flour + 200 levain: PFF, %', prefermented(20, 100) * 100, 9.1),
  ];
}

/** What comes off the scale against the dough wanted, g. */
function scaled(): Row[] {
  const row = rowsOf('scale of a formula', 'port', 'n·unit/(1 − 2 %); Rumford measured 2.03 %');
  const off = (name: 'cherry-hazelnut' | 'lane-wheat', loaves: number): number =>
    makeRecipe(shippedFormula(name), { loaves, piece: 900 }).recipe?.dough ?? NaN;
  return [
    row(
      '24 × 900 g of cherry and hazelnut, off the scale, g',
      off('cherry-hazelnut', 24),
      22_040.8,
    ),
    row('2 × 900 g of it, g', off('cherry-hazelnut', 2), 1836.7),
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

export const formulaRows = (): Row[] => [...sheets(), ...scaled(), ...usage()];
