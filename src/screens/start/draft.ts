import { LOAVES } from '../../core/formula/make-recipe.ts';
import type { Formula } from '../../core/formula/formula.ts';
import type { Join } from '../../core/records/stage.ts';
import { bread as words, start } from '../../core/speech/words/start.ts';
import { trouble } from '../../core/speech/words/trouble.ts';
import { reasons } from '../../core/speech/words/notices.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { keyedHeat } from '../../core/speech/keyed.ts';
import type { Units } from '../../core/units.ts';
import type { Order } from '../house.ts';
import { KITCHEN } from '../kitchen-range.ts';

/** What the start page has gathered so far. Nothing that is measured is filled in beforehand. */
export interface Draft {
  readonly formula: string | null;
  readonly loaves: number;
  /** How heavy a baked loaf is to be, g; null: as the recipe's dough comes out. */
  readonly bread: number | null;
  readonly kitchen: number | null;
  readonly from: Join;
}

export const emptyDraft: Draft = {
  formula: null,
  loaves: 2,
  bread: null,
  kitchen: null,
  from: 'levain.feed',
};

/** The order, or the sentence that says what is missing or cannot be. */
export function checkOrder(
  { loaves, bread, kitchen, from }: Draft,
  formula: Formula | null,
  units: Units,
):
  | { readonly order: Order; readonly missing: null }
  | { readonly order: null; readonly missing: string } {
  const no = (missing: string) => ({ order: null, missing });
  if (formula === null) return no(start.noFormulas);
  if (!Number.isInteger(loaves) || loaves < LOAVES.least || loaves > LOAVES.most) {
    return no(fill(reasons.loavesOutside, { got: loaves, ...LOAVES }));
  }
  if (kitchen === null) return no(start.kitchen);
  if (!(kitchen >= KITCHEN.least && kitchen <= KITCHEN.most)) {
    return no(
      fill(trouble.kitchenRange, {
        got: showHeat(kitchen, units),
        range: keyedHeat(KITCHEN, units).range,
      }),
    );
  }
  // A bake that begins at the beginning is read through first.
  return {
    order: {
      formula,
      loaves,
      kitchen,
      from: from === 'levain.feed' ? 'read.plan' : from,
      ...(bread === null ? {} : { bread }),
    },
    missing: null,
  };
}

/** How many loaves, and how heavy each where that was said: '2 of 800 g'. */
export const loavesTold = ({ loaves: count, bread }: Draft, units: Units): string =>
  bread === null ? String(count) : fill(words.of, { count, ...shown({ grams: bread }, units) });

/** The question that a half-typed weight of a baked loaf belongs to. */
export const breadQuestion = (formula: string): string => `${words.ask} ${formula}`;
