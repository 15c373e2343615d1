import { sayNumber, showNumber } from './numbers.ts';
import { twinned } from './tongue.ts';
import { ouncesOf, type Grams, type Units } from '../units.ts';

/** Hundredths of an ounce in a pound. */
const POUND = 1600;

/**
 * A weight as it is read off a scale in pounds and ounces. Salt and starter, under 2 oz, to 0.01 oz:
 * grams give them to 0.1 g, and 0.05 oz would be a tenth of the salt. To 0.05 oz up to a pound, to
 * 0.1 oz from there, as home scales step. From a pound on the trade counts pounds and ounces.
 * Judgement, after common practice, no source.
 */
function poundsAndOunces(grams: Grams): { readonly pounds: number; readonly ounces: number } {
  const exact = ouncesOf(grams);
  const step = exact < 2 ? 1 : exact < 16 ? 5 : 10;
  const hundredths = Math.round((exact * 100) / step) * step;
  return { pounds: Math.floor(hundredths / POUND), ounces: (hundredths % POUND) / 100 };
}

/** How the unit itself is written, behind a number that is keyed in. */
export const weightSign = ({ weight }: Units): string => weight;

/** Behind a weight that is keyed with a point. */
export const KILOGRAMS = 'kg';

/**
 * A weight as it is shown, to 0.1 g or as above; 0 g and more.
 *
 * @example showWeight(900, { heat: 'C', weight: 'g' }) // '900 g'
 * @example showWeight(900, { heat: 'C', weight: 'oz' }) // '1 lb 15.7 oz', blanks that do not break
 */
export function showWeight(grams: Grams, { weight }: Units): string {
  if (weight === 'g') return `${showNumber(grams)} g`;
  const { pounds, ounces } = poundsAndOunces(grams);
  if (pounds === 0) return `${showNumber(ounces, 2)} oz`;
  // Broken after the pounds it would be read as pounds alone.
  return ounces === 0 ? `${pounds} lb` : `${pounds}\u00a0lb\u00a0${showNumber(ounces, 2)}\u00a0oz`;
}

/**
 * A weight as it is said.
 *
 * @throws Error where it is below 0 or above 99999 g
 * @example sayWeight(935.53, { heat: 'C', weight: 'oz' }) // 'two pounds one ounce'
 */
export function sayWeight(grams: Grams, { weight }: Units): string {
  if (weight === 'g') return sayNumber(grams, 'gram');
  const { pounds, ounces } = poundsAndOunces(grams);
  const heavy = sayNumber(pounds, 'pound');
  const light = sayNumber(ounces, 'ounce', 2);
  if (pounds === 0 || ounces === 0) return pounds === 0 ? light : heavy;
  return twinned(() => `${sayNumber(pounds, 'pound')} ${sayNumber(ounces, 'ounce', 2)}`);
}
