import { amounts } from '../formula/amounts.ts';
import { doughPct } from '../formula/dough-pct.ts';
import type { Formula } from '../formula/formula.ts';
import { KEEP_BACK } from '../formula/levain-to-make.ts';
import { mixedAmounts } from '../formula/mixed-amounts.ts';
import type { WeighLine } from '../formula/recipe.ts';
import { weighDough } from '../formula/weigh-dough.ts';
import { weighFeed } from '../formula/weigh-feed.ts';
import { bowlsFor } from '../kitchen/bowls.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import { splitBowls, type Bowl } from '../kitchen/split-bowls.ts';
import type { Grams } from '../units.ts';
import type { Batch } from './batches.ts';
import { isSameDough } from './same-dough.ts';

/** One dough for all batches that differ in their fillings only. */
export interface BaseDough {
  /** A batch's fillings are its recipe's own lines: they go in when its dough has left the bowl. */
  readonly batches: readonly Batch[];
  /** What is mixed, line by line, off the scale. */
  readonly lines: readonly WeighLine[];
  /** All of it, without fillings. */
  readonly dough: Grams;
  /** Levain that goes in. */
  readonly levain: Grams;
  /** What is weighed into the levain's jar: for this dough, what is kept back, and jar and spoon. */
  readonly feed: readonly WeighLine[];
  readonly bowls: readonly Bowl[];
}

const inTenths = (lines: readonly WeighLine[]): Grams =>
  lines.reduce((sum, { grams }) => sum + Math.round(grams * 10), 0) / 10;

/** Batches by what is mixed, each in its first one's place. */
const byDough = (batches: readonly Batch[]): readonly (readonly Batch[])[] => {
  const groups: Batch[][] = [];
  for (const batch of batches) {
    const own = groups.find(([first]) => isSameDough(first!.formula, batch.formula));
    if (own) own.push(batch);
    else groups.push([batch]);
  }
  return groups;
};

/** Exact grams of the dough that batches share, before it is rounded for a scale, in its first one's proportions. */
export function baseAmounts(batches: readonly Pick<Batch, 'formula' | 'loaves' | 'piece'>[]) {
  const plain: Formula = { ...batches[0]!.formula, fillings: [] };
  const flour = batches.reduce(
    (sum, { formula, loaves, piece }) => sum + mixedAmounts(formula, loaves, piece).totalFlour,
    0,
  );
  return amounts(plain, (flour * doughPct(plain)) / 100);
}

/** Off the scale; a batch that has its dough to itself is weighed as its bench weighs it. */
const linesOf = (batches: readonly Batch[], scale: Grams | null): readonly WeighLine[] => {
  const [only] = batches;
  const { first, second } =
    batches.length === 1 ? only!.recipe.lines : weighDough(baseAmounts(batches), scale).lines;
  return [...first, ...second];
};

function baseDough(
  batches: readonly Batch[],
  { scale, bowls }: Pick<Equipment, 'scale' | 'bowls'>,
): BaseDough {
  const exact = baseAmounts(batches);
  const lines = linesOf(batches, scale);
  const dough = inTenths(lines);
  // What is laid on a sheet rises in the bowl with its dough, and is counted there as the bench does.
  const filled = dough + inTenths(batches.flatMap(({ recipe }) => recipe.lines.filling));
  return {
    batches,
    lines,
    dough,
    levain: lines.find(({ item }) => item === 'levain')?.grams ?? 0,
    feed: weighFeed(batches[0]!.formula, exact.levain, KEEP_BACK, scale),
    bowls: splitBowls(lines, bowlsFor(filled, bowls)),
  };
}

/**
 * What is mixed for a day's batches: breads that are the same dough but for their fillings are mixed as
 * one, shared between as many bowls as this kitchen wants, their clocks 6 minutes apart. What stays in
 * bowl and on hands (2 %) is of this dough; a filling that goes in later loses none of it.
 * Source: arithmetic over `mixedAmounts`, `splitBowls`, `weighFeed`. Failure: none.
 */
export const baseDoughs = (
  batches: readonly Batch[],
  equipment: Pick<Equipment, 'scale' | 'bowls'>,
): readonly BaseDough[] => byDough(batches).map((group) => baseDough(group, equipment));
