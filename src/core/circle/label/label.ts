import type { Formula } from '../../formula/formula.ts';
import { bakeLoss } from '../../formula/bake-loss.ts';
import { onLabel } from '../../speech/words/label.ts';
import { fill } from '../../speech/fill.ts';
import { showKinds } from '../../speech/show-allergen.ts';
import { showWeight } from '../../speech/weights.ts';
import { showBread } from '../../speech/show-bread.ts';
import type { Grams } from '../../units.ts';
import type { LabelList } from '../circle.ts';
import { glutenIn, namedBy } from './allergen-lists.ts';
import { ingredientRuns, inOrder, type LookUp } from './ingredients.ts';
import { plainText } from './plain-text.ts';
import type { Run } from './set-apart.ts';
import { isKeptCold, wantingFor, type Wanting } from './wanting.ts';

/** What a label is made from. */
export interface LabelAsk {
  readonly formula: Formula;
  readonly list: LabelList;
  readonly lookUp: LookUp;
  /** Of the cool loaf, as it was ordered; null: as the piece comes out. */
  readonly grams: Grams | null;
  readonly cut: boolean;
  /** The bake's date as the tablet shows it. */
  readonly baked: string;
  /** Eaten within so many days; null: not said. */
  readonly days: number | null;
  /** The maker's own. */
  readonly lines: readonly string[];
  /** Whose it is, where that is to be printed. */
  readonly who: string | null;
}

/** A label's texts, from top to bottom. */
export interface Label {
  readonly name: string;
  readonly who: string | null;
  readonly cut: string | null;
  readonly ingredients: readonly Run[];
  /** Behind the ingredients: for the EU how the allergens are set apart, else what it contains; null: nothing of that list. */
  readonly allergens: string | null;
  readonly notFree: string | null;
  readonly weight: string;
  readonly baked: string;
  readonly keep: readonly string[];
  readonly lines: readonly string[];
}

export type MadeLabel =
  | {
      readonly label: Label;
      readonly wanting: readonly [];
      /** Said by an ingredient's own words and not by its packet's list: named, and to be looked at. */
      readonly look: readonly { readonly name: string; readonly allergens: readonly string[] }[];
    }
  | { readonly label: null; readonly wanting: readonly Wanting[] };

/**
 * What a cool loaf weighs: as ordered, else its piece less the bake loss, down to the full 10 g, so that
 * a label promises no more than is there (judgement).
 *
 * @example
 * coolWeight(900, null) // → 780
 */
export const coolWeight = (piece: Grams, ordered: Grams | null): Grams =>
  Math.floor(ordered ?? Math.floor((piece * (1 - bakeLoss(piece))) / 10) * 10);

const weightFor = (list: LabelList, grams: Grams): string => {
  const metric = showWeight(grams, { heat: 'C', weight: 'g' });
  if (list !== 'us') return metric;
  return `${metric} (${showWeight(grams, { heat: 'F', weight: 'oz' })})`;
};

const allergenLine = (list: LabelList, names: readonly string[]): string | null => {
  if (names.length === 0) return null;
  return list === 'eu' ? onLabel.apart : fill(onLabel.contains, { allergens: names.join(', ') });
};

const keepLines = (formula: Formula, days: number | null): readonly string[] => {
  if (!isKeptCold(formula) || days === null) return [onLabel.paper];
  const { one, many } = onLabel.eatWithin;
  return [onLabel.cold, days === 1 ? one : fill(many, { days })];
};

/**
 * One loaf's label, or all that is still to be answered before there is one: nothing is guessed, and
 * no answer is never none. It claims to be complete by no law: local rules come first.
 */
export function makeLabel(ask: LabelAsk): MadeLabel {
  const { formula, list, lookUp, days } = ask;
  const wanting = wantingFor(formula, list, lookUp, days);
  if (wanting.length > 0) return { label: null, wanting };
  const lines = inOrder(formula, list, lookUp);
  const brought = lines.flatMap(({ allergens }) => allergens);
  const gluten = glutenIn(brought);
  const runs = ingredientRuns(lines);
  return {
    label: {
      name: plainText(showBread(formula.name)),
      who: ask.who === null ? null : plainText(ask.who),
      cut: ask.cut ? onLabel.sliced : null,
      ingredients: list === 'eu' ? runs : runs.map((run) => ({ ...run, apart: false })),
      allergens: allergenLine(list, namedBy(list, brought)),
      notFree: gluten.length > 0 ? fill(onLabel.notFree, { allergens: showKinds(gluten) }) : null,
      weight: fill(onLabel.weight, {
        grams: weightFor(list, coolWeight(formula.piece, ask.grams)),
      }),
      baked: fill(onLabel.baked, { date: ask.baked }),
      keep: keepLines(formula, days),
      lines: ask.lines.map(plainText).filter((line) => line !== ''),
    },
    wanting: [],
    look: lines.flatMap(({ name, besides }) =>
      besides.length > 0 ? [{ name, allergens: besides }] : [],
    ),
  };
}
