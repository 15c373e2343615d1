import type { Recipe } from '../formula/recipe.ts';
import type { LogRecord } from '../records/record.ts';
import type { Grams, Instant } from '../units.ts';
import type { Ingredient } from './circle.ts';
import { usesOf, type Use } from './uses.ts';

/** What one bake took, and when it was begun. */
export interface Taken {
  readonly at: Instant;
  readonly uses: readonly Use[];
}

/** What should stand in the cupboard, g as bought; or why nobody can say. */
export type There =
  | { readonly grams: Grams; readonly why: null }
  | { readonly grams: null; readonly why: 'notCounted' | 'tooLongAgo' };

/** Of an ingredient that nobody has written anything down for. */
const NOT_COUNTED: There = { grams: null, why: 'notCounted' };

/** A hundredth of a gram is no want: sums of tenths come out a hair beside nothing. */
const HAIR = 0.01;

/**
 * So much as bought, g, for so much that goes onto the scale: what is peeled, stoned or sifted away is
 * bought too. Source: as-purchased = edible portion ÷ yield, common practice in kitchens, no source.
 *
 * @param usable over 0 to 1
 * @example
 * asBought(75, 0.75) // → 100
 */
export const asBought = (grams: Grams, usable: number): Grams => grams / usable;

/** What of a bake's lists was weighed by a stage at which it was ended. */
function weighedBy(stage: string, { lines }: Recipe): Recipe['lines'] {
  const none = { feed: [], first: [], second: [], filling: [] };
  if (stage.startsWith('read.') || stage === 'levain.feed') return none;
  return stage.startsWith('levain.') || stage === 'mix.weigh'
    ? { ...none, feed: lines.feed }
    : lines;
}

/**
 * What bakes took, in the order of the log. A start that was taken back took nothing, and a bake that
 * was ended before its dough was weighed took at most its feed.
 */
export function takenBy(records: readonly LogRecord[]): readonly Taken[] {
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const endedAt = new Map<string, string>();
  for (const [i, { fact }] of records.entries()) {
    if (fact.kind !== 'press' || fact.act !== 'ended' || withdrawn.has(fact.id)) continue;
    const stage = records[i - 1]?.position.bakes[fact.who]?.stage;
    if (stage !== undefined) endedAt.set(fact.who, stage);
  }
  return records.flatMap(({ fact }) => {
    if (fact.kind !== 'start' || withdrawn.has(fact.id)) return [];
    const stage = endedAt.get(fact.bake);
    const lines = stage === undefined ? fact.recipe.lines : weighedBy(stage, fact.recipe);
    return [{ at: fact.at, uses: usesOf({ lines }) }];
  });
}

/**
 * What should be there of each ingredient: its last count less what bakes begun since then took.
 * Derived and never kept. Where they took more than was counted nobody knows what is there: it was
 * counted too long ago. A bake begun in the very millisecond of a count was before it.
 */
export function stockOf(
  ingredients: readonly Ingredient[],
  taken: readonly Taken[],
): (id: string) => There {
  const known = new Map(ingredients.map((one) => [one.id, one]));
  const used = new Map<string, Grams>();
  for (const { at, uses } of taken) {
    for (const { id, grams } of uses) {
      const since = known.get(id)?.counted?.at ?? Infinity;
      if (at > since) used.set(id, (used.get(id) ?? 0) + grams);
    }
  }
  return (id) => {
    const one = known.get(id);
    if (!one?.counted) return NOT_COUNTED;
    const left = one.counted.grams - asBought(used.get(id) ?? 0, one.pack?.usable ?? 1);
    if (left < -HAIR) return { grams: null, why: 'tooLongAgo' };
    return { grams: Math.max(0, left), why: null };
  };
}

/** Counted by the scale or the eye: so much is there, g, from now on. */
export const counted = (one: Ingredient, grams: Grams, at: Instant): Ingredient => ({
  ...one,
  counted: { grams, at },
});

/**
 * So many packs more than should be there; where nobody knows what is there, the packs alone are known.
 * Of an ingredient whose pack is not known nothing changes.
 */
export const packsMore = (one: Ingredient, packs: number, there: There, at: Instant): Ingredient =>
  one.pack === null ? one : counted(one, (there.grams ?? 0) + packs * one.pack.grams, at);
