import type { Filling, Flour, Formula } from '../../formula/formula.ts';
import { ofFlour } from '../../formula/allergens.ts';
import { bakeLoss } from '../../formula/bake-loss.ts';
import { doughPct, soakPct } from '../../formula/dough-pct.ts';
import { onLabel } from '../../speech/words/label.ts';
import { showPart } from '../../speech/show-part.ts';
import type { Ingredient, LabelList } from '../circle.ts';
import { plainText } from './plain-text.ts';
import { saidIn, setApart, termsOf, type Run } from './set-apart.ts';

/** What the cupboard knows under a name; null: nothing. */
export type LookUp = (name: string) => Pick<Ingredient, 'madeOf'> | null;

/** One line of a list of ingredients. `pct`: of all flour, what its place goes by. */
export interface Listed {
  /** In the tongue that stands. */
  readonly name: string;
  readonly pct: number;
  /** What it is made of, in its packet's order; none: nothing but itself. */
  readonly madeOf: readonly string[];
  /** As core/formula/allergens.ts keeps them, those that its own words say among them. */
  readonly allergens: readonly string[];
  /** Those that its own words say and its list does not: to be looked at again. */
  readonly besides: readonly string[];
}

/** Looked up, and its words searched, by the name that is kept: what is found is the same in every tongue. */
const listed = (
  name: string,
  pct: number,
  allergens: readonly string[],
  lookUp: LookUp,
): Listed => {
  const madeOf = (lookUp(name)?.madeOf ?? []).map(plainText).filter((text) => text !== '');
  const named = termsOf(allergens);
  const besides = saidIn([plainText(name), ...madeOf].join('\n')).filter((text) =>
    termsOf([text]).some((term) => !named.includes(term)),
  );
  return {
    name: plainText(showPart(name)),
    pct,
    madeOf,
    allergens: [...allergens, ...besides],
    besides,
  };
};

const flourOf = (flour: Flour, lookUp: LookUp): Listed =>
  listed(flour.name, flour.pct, ofFlour(flour), lookUp);
const fillingOf = (filling: Filling, lookUp: LookUp): Listed =>
  listed(filling.name, filling.pct, filling.allergens, lookUp);

/**
 * What a loaf is made of, the most by weight first, as it goes into the dough; of two as heavy, flours
 * first. The levain is opened: its flour and its water are the dough's own and are counted with them, so
 * that each stands once, at all its weight (one rule for every bread; judgement). A soaker's water counts
 * as water. For the EU water is what stays in the loaf: what the oven takes is off it.
 * Source: EU 1169/2011 Art. 18 and Annex VII A 1; US 21 CFR 101.4; Canada B.01.008.2; all from memory.
 *
 * @example
 * inOrder({ flours: [{ id: 'w', name: 'wheat flour', grain: 'wheat', pct: 100 }], hydration: 70, salt: 2, fillings: [], piece: 900 }, 'eu', () => null).map(({ name }) => name) // → ['wheat flour', 'water', 'salt']
 */
export function inOrder(
  formula: Pick<Formula, 'flours' | 'hydration' | 'salt' | 'fillings' | 'piece'>,
  list: LabelList,
  lookUp: LookUp,
): readonly Listed[] {
  const { flours, hydration, salt, fillings, piece } = formula;
  const soaked = fillings.reduce((sum, filling) => sum + soakPct(filling), 0);
  const lost = list === 'eu' ? bakeLoss(piece) * doughPct(formula) : 0;
  return [
    ...flours.map((flour) => flourOf(flour, lookUp)),
    listed(onLabel.water, Math.max(0, hydration + soaked - lost), [], lookUp),
    ...fillings.map((filling) => fillingOf(filling, lookUp)),
    listed(onLabel.salt, salt, [], lookUp),
  ]
    .filter(({ pct }) => pct > 0)
    .toSorted((a, b) => b.pct - a.pct);
}

/** An ingredient opened: 'milk chocolate (sugar, cocoa butter)'. */
const opened = ({ name, madeOf }: Listed): string =>
  madeOf.length === 0 ? name : `${name} (${madeOf.join(', ')})`;

const plainTerms = (allergens: readonly string[]): readonly string[] =>
  termsOf(allergens)
    .map(plainText)
    .filter((term) => term !== '');

/**
 * The list as it is printed: each compound opened in brackets in its own order, every allergen's name
 * set apart (EU 1169/2011 Art. 21, from memory). Where a name has a comma of its own, semicolons stand
 * between them, so that none is read as two.
 */
export function ingredientRuns(lines: readonly Listed[]): readonly Run[] {
  const between = lines.some(({ name }) => name.includes(',')) ? '; ' : ', ';
  return lines.flatMap((line, i) => [
    ...(i > 0 ? [{ text: between, apart: false }] : []),
    ...setApart(opened(line), plainTerms(line.allergens)),
  ]);
}
