import { weighedAmounts } from '../../core/formula/mixed-amounts.ts';
import type { FillingKind } from '../../core/formula/filling-facts.ts';
import type { Filling, Formula } from '../../core/formula/formula.ts';
import { makeRecipe } from '../../core/formula/make-recipe.ts';
import { swapFilling, swapHerbs, type Swapped } from '../../core/formula/swaps.ts';
import { freeId } from '../../core/records/book.ts';
import { fillingKinds } from '../../core/speech/words/filling-kinds.ts';
import { bookSwaps, swapChanges } from '../../core/speech/words/swaps.ts';
import { fill } from '../../core/speech/fill.ts';
import { showAllergens } from '../../core/speech/show-allergen.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { inEnglish } from '../../core/speech/tongue.ts';
import { showWeight } from '../../core/speech/weights.ts';
import type { Grams, Units } from '../../core/units.ts';
import { kindOf } from './filling-kind.ts';
import { herbName } from './herb-name.ts';
import { isCalled } from './known-names.ts';
import {
  fillingLike,
  knownFilling,
  type FillingToAdd,
  type KnownFilling,
} from './known-fillings.ts';
import { scaleGrams } from './words.ts';

/** A swap that one press does, and all that is told of it before. */
export interface SwapOffer {
  /** 'Dried instead of fresh' */
  readonly label: string;
  /** '35 g instead of 70 g' */
  readonly value: string;
  /** Its rule, and where that is from. */
  readonly rule: string;
  /** What else it changes, a sentence each; never empty. */
  readonly changes: readonly string[];
  readonly formula: Formula;
}

/** What may stand for what, weight for weight. Common practice, no source. */
const ALIKE: readonly (readonly [readonly FillingKind[], readonly KnownFilling[]])[] = [
  [['nuts'], ['walnut', 'hazelnut']],
  [
    ['seeds', 'sesame'],
    ['sunflower', 'pumpkin', 'sesame'],
  ],
  [['driedFruit'], ['raisin', 'apricot']],
  [['brinedOlives'], ['olive']],
];
/** Out of their brine they are cut as the others are. Common practice, no source. */
const brined = (): FillingToAdd => ({
  ...fillingLike(
    'brinedOlives',
    inEnglish(() => fillingKinds.brinedOlives),
  ),
  prepare: ['drain', 'cut'],
});

interface Swap {
  readonly label: string;
  readonly rule: string;
  readonly swapped: Swapped;
}

const swapsFor = (formula: Formula, was: Filling): readonly Swap[] => {
  const kind = kindOf(was);
  const others = formula.fillings.filter(({ id }) => id !== was.id);
  const as = (other: FillingToAdd): FillingToAdd => ({
    ...other,
    id: freeId(other.id, others),
    ...(was.group === undefined ? {} : { group: was.group }),
  });
  if (kind === 'freshHerbs' || kind === 'driedHerbs') {
    const to = kind === 'freshHerbs' ? 'dried' : 'fresh';
    const name = herbName(was.name, to);
    const like = fillingLike(to === 'dried' ? 'driedHerbs' : 'freshHerbs', name);
    const other = as(to === 'fresh' ? { ...like, prepare: ['cut'] } : like);
    const swapped = swapHerbs(formula, was.id, { to, other });
    return [{ label: bookSwaps[to], rule: bookSwaps.herbs, swapped }];
  }
  const known = ALIKE.find(([kinds]) => kinds.some((one) => one === kind))?.[1] ?? [];
  const alike = kind === 'dryOlives' ? [brined()] : known.map(knownFilling);
  return alike.flatMap((other): Swap[] => {
    const isThere = formula.fillings.some(
      (one) =>
        kindOf(one) === kindOf(other) && (one.id === other.id || isCalled(one.name, other.id)),
    );
    if (isThere) return [];
    const swapped = swapFilling(formula, was.id, as(other));
    const label = fill(bookSwaps.other, { name: showPart(other.name) });
    return [{ label, rule: bookSwaps.even, swapped }];
  });
};

/** What a swap changes besides the weight. `weights`: of the old one and the new, g. */
function changesOf(
  was: Filling,
  is: Filling,
  weights: readonly [Grams, Grams],
  units: Units,
): string[] {
  const lines: string[] = [];
  for (const what of ['salt', 'water'] as const) {
    const [old, next] = [was.brings?.[what], is.brings?.[what]];
    if (next === undefined) continue;
    const grams = (weights[1] * next) / 100;
    const before = old === undefined ? null : (weights[0] * old) / 100;
    const [isNow, wasThen] = [tenth(grams, units), before === null ? null : tenth(before, units)];
    if (isNow === wasThen || (wasThen === null && grams < 0.05)) continue;
    lines.push(
      wasThen === null
        ? fill(swapChanges[`${what}Is`], { is: isNow })
        : fill(swapChanges[what], { is: isNow, was: wasThen }),
    );
  }
  if (lines.length > 0) lines.push(swapChanges.guess);
  if (was.keeps !== is.keeps) lines.push(swapChanges[is.keeps]);
  const gone = was.allergens.filter((one) => !is.allergens.includes(one));
  if (is.allergens.some((one) => !was.allergens.includes(one)))
    lines.push(fill(swapChanges.names, { allergens: showAllergens(is.allergens) }));
  if (gone.length > 0) lines.push(fill(swapChanges.drops, { allergens: showAllergens(gone) }));
  return lines;
}

/** Salt to a tenth of a gram, as it is weighed. */
const tenth = (grams: Grams, units: Units): string =>
  showWeight(grams < 10 ? Math.round(grams * 10) / 10 : Math.round(grams), units);

/** Why there would be no bread of it, where there is one now; none where nothing stands in the way. */
const stands = (formula: Formula, next: Formula, units: Units): string[] => {
  const made = (of: Formula) => makeRecipe(of, { loaves: 1, piece: of.piece });
  const { reason } = made(next);
  return reason && made(formula).recipe ? [tellNotice(reason, units)] : [];
};

/**
 * Swaps that may be made of a filling, for a dough of so many grams; none where nobody can tell what it
 * is. One that the formula could not be read with is not offered.
 */
export function swapOffers(
  formula: Formula,
  id: string,
  dough: Grams,
  units: Units,
): readonly SwapOffer[] {
  const at = formula.fillings.findIndex((one) => one.id === id);
  const was = formula.fillings[at];
  if (was === undefined) return [];
  return swapsFor(formula, was).flatMap(({ label, rule, swapped }): SwapOffer[] => {
    const next = swapped.formula;
    if (next === null) return [];
    const is = next.fillings[at]!;
    const [before, after] = [formula, next].map(
      (of) => weighedAmounts(of, dough).fillings[at]!.grams,
    );
    const weighs = scaleGrams(after!, `filling:${is.id}`, units);
    const weighed = scaleGrams(before!, `filling:${id}`, units);
    const changes = [
      ...changesOf(was, is, [before!, after!], units),
      ...stands(formula, next, units),
    ];
    return [
      {
        label,
        value: fill(weighs === weighed ? bookSwaps.alike : bookSwaps.value, {
          is: weighs,
          was: weighed,
        }),
        rule,
        changes: changes.length > 0 ? changes : [swapChanges.same],
        formula: next,
      },
    ];
  });
}
