import type { Ingredient } from '../../../core/circle/circle.ts';
import type { There } from '../../../core/circle/stock.ts';
import { cupboard, ingredientPage } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMoney } from '../../../core/speech/money.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { gramsOfPounds, type Grams, type Units } from '../../../core/units.ts';

/** 'Strong wheat flour': a name, in the tongue that stands, begins a line. */
export const begun = (name: string): string => {
  const shown = showPart(name);
  return shown.charAt(0).toUpperCase() + shown.slice(1);
};

/** Grams of store are read to a gram: nobody counts a sack to a tenth. */
export const storeWeight = (grams: Grams, units: Units): string =>
  showWeight(grams < 10 ? grams : Math.round(grams), units);

/** What should be there, or why nobody can say. */
export function thereTold({ grams, why }: There, units: Units): string {
  if (why !== null) return cupboard[why];
  return grams === 0 ? cupboard.gone : fill(cupboard.there, { grams: storeWeight(grams, units) });
}

/** '1000 g for €2.40'; null: no pack is known. */
export const packTold = ({ pack }: Ingredient, currency: string, units: Units): string =>
  pack === null
    ? ingredientPage.packUnknown
    : fill(ingredientPage.packIs, {
        grams: storeWeight(pack.grams, units),
        value: showMoney(pack.cost, currency),
      });

/** What a price is told for: a kilo, or a pound. */
export const priceWeight = ({ weight }: Units): Grams => (weight === 'g' ? 1000 : gramsOfPounds(1));
