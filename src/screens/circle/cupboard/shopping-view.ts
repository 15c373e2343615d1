import type { Ingredient } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { isToBuy, type ShoppingLine } from '../../../core/circle/shopping.ts';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { shown } from '../../../core/speech/facts.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import { showParts } from '../../../core/speech/show-part.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Units } from '../../../core/units.ts';
import type { ShoppingList } from './shopping-list.ts';
import { begun, storeWeight, thereTold } from './words.ts';

/** One thing to buy, as it is shown, printed and copied. */
export interface BuyView {
  readonly id: string;
  readonly name: string;
  /** '2 × 1000 g', or by weight where no pack is known. */
  readonly much: string;
  /** That nobody knows what is there; null: it is known. */
  readonly doubt: string | null;
  readonly needed: string;
  readonly there: string;
}

/** 'Sat 3 May', or all days. */
export const daysTold = (day: DayKey | null): string => (day === null ? words.all : showDay(day));

/** How much of it is to be bought. Weights are rounded up: too little is no bread. */
function muchTold({ lacking, packs }: ShoppingLine, one: Ingredient | null, units: Units): string {
  if (packs === null || !one?.pack) return storeWeight(Math.ceil(lacking), units);
  const grams = storeWeight(one.pack.grams, units);
  return fill(words.packs, { count: packs, grams });
}

export const buyView = (line: ShoppingLine, one: Ingredient | null, units: Units): BuyView => ({
  id: line.id,
  name: begun(line.name),
  much: muchTold(line, one, units),
  doubt: line.there.why === null ? null : thereTold(line.there, units),
  needed: storeWeight(Math.ceil(line.needed), units),
  there:
    line.there.grams === null ? thereTold(line.there, units) : storeWeight(line.there.grams, units),
});

/** For which days and how many loaves it is, and what of them is not in it. */
export function listTold(
  { loaves, begun: making, left }: ShoppingList,
  day: DayKey | null,
): readonly string[] {
  return [
    ...(loaves > 0
      ? [fill(words.forDays, { days: daysTold(day), ...shown({ loaves }) })]
      : making + left > 0
        ? []
        : [words.noOrders]),
    ...(left > 0 ? [fill(words.left, shown({ loaves: left }))] : []),
  ];
}

/** What is in the making, and what there is enough of. `bought`: ids of what was ticked. */
export function notesOf(
  { lines, begun: making }: ShoppingList,
  bought: (id: string) => boolean,
): readonly string[] {
  const enough = lines.filter((line) => !isToBuy(line) && !bought(line.id));
  return [
    ...(making > 0 ? [fill(words.begun, shown({ loaves: making }))] : []),
    ...(enough.length > 0
      ? [fill(words.enough, { kinds: showParts(enough.map(({ name }) => name)) })]
      : []),
  ];
}

/** The list as plain text, a line for each thing. */
export const listText = (days: string, lines: readonly BuyView[]): string =>
  [
    `${words.title}, ${days}`,
    ...lines.map(({ name, much }) => `- ${fill(words.line, { name, value: much })}`),
  ].join('\n');
