import type { Grams } from '../units.ts';
import { fillingWarnings } from './filling-warnings.ts';
import type { Formula } from './formula.ts';
import type { Notice } from './notice.ts';

/** Most dough to work by hand in one bowl, g. Common practice, no source. */
export const HAND_BOWL: Grams = 3000;

/** Rye share of all flour, %, up to which the dough clock holds: its stated range; judgement. */
const MOST_RYE = 40;

/** A feed's own water may differ from the levain's hydration by this much before it is told. */
const FEED_TOLERANCE = 0.02;

/**
 * Warnings about a formula's numbers, each a key with its values; a baker may go on.
 * hydrationOutside 55–95 % · pffOutside .02–.25 · feedDisagrees (the feed's water does not make the
 * levain's hydration) · ryeOutside over 40 % rye (the dough clock was not fitted to it) · those of salt
 * and fillings (filling-warnings.ts) · heavyDough over 3 kg by hand (`dough` in grams).
 * Source: hydration, prefermented share and bowl: common practice, no source.
 */
export function formulaWarnings(formula: Formula, dough: Grams): readonly Notice[] {
  const warnings: Notice[] = [];
  const tell = (key: string, values: Notice['values']): void => void warnings.push({ key, values });
  const { hydration, levain } = formula;
  if (hydration < 55 || hydration > 95) {
    tell('hydrationOutside', { hydration, least: 55, most: 95 });
  }
  if (levain.pff < 0.02 || levain.pff > 0.25) {
    tell('pffOutside', { pff: levain.pff * 100, least: 2, most: 25 });
  }
  if (Math.abs(levain.feed.water / levain.feed.flour - levain.hydration) > FEED_TOLERANCE) {
    const { flour, water } = levain.feed;
    tell('feedDisagrees', { flour, water, hydration: levain.hydration * 100 });
  }
  const rye = formula.flours.reduce((sum, f) => sum + (f.grain === 'rye' ? f.pct : 0), 0);
  if (rye > MOST_RYE) tell('ryeOutside', { rye, most: MOST_RYE });
  warnings.push(...fillingWarnings(formula));
  if (dough > HAND_BOWL) tell('heavyDough', { dough, most: HAND_BOWL });
  return warnings;
}
