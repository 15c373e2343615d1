import type { Formula } from '../../core/formula/formula.ts';
import { isWarm } from '../../core/formula/is-warm.ts';
import { scaleDivision } from '../../core/formula/round-for-scale.ts';
import { book, bookKinds, bookLines, grains } from '../../core/speech/words/book.ts';
import { bookParts } from '../../core/speech/words/book-parts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showNumber } from '../../core/speech/numbers.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { showWeight } from '../../core/speech/weights.ts';
import type { Grams, Units } from '../../core/units.ts';
import { isBowl, type Line, type LineKey } from './lines.ts';

/** 'Strong wheat flour': a name begins a line. */
const begun = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** What a line is called, in the formula's own convention. */
export function lineName(formula: Formula, key: LineKey): string {
  const id = key.slice(key.indexOf(':') + 1);
  if (key.startsWith('flour:'))
    return begun(showPart(formula.flours.find((one) => one.id === id)?.name ?? id));
  if (key.startsWith('filling:')) {
    return begun(showPart(formula.fillings.find((one) => one.id === id)?.name ?? id));
  }
  if (key === 'water') return isBowl(formula) ? bookLines.water.bowl : bookLines.water.whole;
  return bookLines[key as 'secondWater' | 'levain' | 'levainWater' | 'salt'];
}

/** Grams as the kitchen's scale would have them: salt to a tenth, flour to five. */
export const scaleGrams = (grams: Grams, key: LineKey, units: Units): string => {
  const step = scaleDivision(grams, key === 'salt' ? 'salt' : 'other');
  return showWeight(Math.round(grams / step) * step, units);
};

/** '1.9 % · 17 g' */
export const lineValue = ({ key, percent, grams, ofDough }: Line, units: Units): string =>
  grams === null
    ? fill(bookLines.percent, { percent: showNumber(percent) })
    : fill(ofDough ? bookParts.ofDoughValue : bookLines.value, {
        percent: showNumber(percent),
        grams: scaleGrams(grams, key, units),
      });

/** What it is of, in a few words: '75 % water, wheat, rye, filled'. */
export function kindsOf(formula: Formula): string {
  const kinds: string[] = [...new Set(formula.flours.map(({ grain }) => grains[grain]))];
  if (formula.fillings.length > 0) kinds.push(book.filled);
  return fill(book.line, { water: showNumber(formula.hydration), kinds: kinds.join(', ') });
}

/** 'overnight in the fridge, pot' */
export const madeHow = ({ process }: Formula): string =>
  `${isWarm(process) ? bookKinds.warm : bookKinds.cold}, ${bookKinds[process.vessel]}`;
