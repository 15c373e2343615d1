import { kitchenWarnings } from './words/kitchen-warnings.ts';
import {
  lentReasons,
  processParts,
  reasons,
  stepReasons,
  swaps,
  warnings,
} from './words/notices.ts';
import { fill } from './fill.ts';
import { showHeat } from './heats.ts';
import { showNumber } from './numbers.ts';
import { showPart } from './show-part.ts';
import { showWeight } from './weights.ts';
import type { Notice } from '../formula/notice.ts';
import type { Units } from '../units.ts';

const templates: readonly Readonly<Record<string, string>>[] = [
  reasons,
  warnings,
  kitchenWarnings,
  swaps,
  stepReasons,
  lentReasons,
];
const parts: Readonly<Record<string, string>> = processParts;

/** In any notice words of these names are a flour's or a filling's own name. */
const PARTS = ['filling', 'flour'];

/** In any notice a number of this name is a weight. */
const WEIGHT = 'grams';

/** Notices whose numbers are weights, and those whose numbers are heats; the others have none. */
const MEASURED: Readonly<Record<string, (n: number, units: Units) => string>> = {
  pieceOutside: showWeight,
  waterShort: showWeight,
  levainFlourShort: showWeight,
  heavyDough: (grams, units) => showWeight(Math.round(grams), units),
  fridgeOutside: showHeat,
  fridgeWarm: showHeat,
  cheeseStands: showHeat,
  bakeHeatShort: showHeat,
  preheatShort: showHeat,
  ovenDial: showHeat,
  ovenDialStone: showHeat,
  parchmentLow: showHeat,
};

/** A word of a notice, in the tongue that stands. */
function tellValue(name: string, value: string): string {
  if (name === 'part') return parts[value] ?? value;
  return PARTS.includes(name) ? showPart(value) : value;
}

/**
 * The sentence of a reason or a warning, its numbers shown with one decimal at most, weights and
 * heats in the baker's units.
 *
 * @throws Error `No sentence for the notice x.`
 * @example tellNotice({ key: 'saltHigh', values: { salt: 2.75, most: 2.5 } }, units)
 * // 'Salt is 2.8 %, over the usual 2.5. The dough will rise slowly.'
 */
export function tellNotice({ key, values }: Notice, units: Units): string {
  const template = templates.find((words) => Object.hasOwn(words, key))?.[key];
  if (template === undefined) throw new Error(`No sentence for the notice ${key}.`);
  const number = MEASURED[key] ?? ((n: number) => showNumber(n));
  return fill(
    template,
    Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === 'number'
          ? (name === WEIGHT ? showWeight : number)(value, units)
          : tellValue(name, value),
      ]),
    ),
  );
}
