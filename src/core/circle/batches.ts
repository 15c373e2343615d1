import type { Formula } from '../formula/formula.ts';
import { LOAVES, makeRecipe } from '../formula/make-recipe.ts';
import type { Notice } from '../formula/notice.ts';
import type { Recipe } from '../formula/recipe.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import { pieceHere } from '../oven/piece-here.ts';
import type { TaughtLoss } from '../records/taught.ts';
import type { Grams } from '../units.ts';
import type { Order, OrderLine } from './circle.ts';

/** Loaves of one bread and one weight that are baked together. */
export interface Batch {
  readonly formula: Formula;
  /** Of a cool loaf; null: as the formula's own piece comes out. */
  readonly grams: Grams | null;
  readonly loaves: number;
  readonly piece: Grams;
  /** What the bench weighs for it. */
  readonly recipe: Recipe;
  /** The earliest hour at which one of its loaves is fetched; null: nobody said one. */
  readonly at: MinuteOfDay | null;
}

/** Loaves that were ordered and cannot be made, and why. */
export interface BatchTrouble {
  /** The formula's id. */
  readonly bread: string;
  readonly loaves: number;
  readonly reason: Notice;
}

/** What makes batches of orders: the Book's list, what loaves weighed here, the scale's steps. */
export interface BatchWorld {
  readonly formulas: readonly Formula[];
  readonly weighIns: readonly TaughtLoss[];
  readonly scale: Grams | null;
}

interface Heap {
  readonly formula: Formula;
  readonly piece: Grams;
  readonly grams: Grams | null;
  readonly loaves: number;
  readonly at: MinuteOfDay | null;
}

const earlier = (a: MinuteOfDay | null, b: MinuteOfDay | null): MinuteOfDay | null =>
  a === null || b === null ? (a ?? b) : Math.min(a, b);

/**
 * So many loaves in batches of at most 36, as even as can be: an even dough is mixed as often, and a
 * last one of two loaves is nobody's wish (judgement).
 *
 * @example
 * inBatches(40) // → [20, 20]
 * inBatches(73) // → [25, 24, 24]
 */
export function inBatches(loaves: number): readonly number[] {
  const count = Math.ceil(loaves / LOAVES.most);
  return Array.from({ length: count }, (_, i) => Math.floor((loaves + count - 1 - i) / count));
}

/** All of one bread and one piece together, in the order in which they were first named. */
function heapsOf(
  lines: readonly (OrderLine & Pick<Order, 'at'>)[],
  { formulas, weighIns }: BatchWorld,
): readonly Heap[] {
  const heaps = new Map<string, Heap>();
  for (const { bread, count, grams, at } of lines) {
    const formula = formulas.find(({ id }) => id === bread);
    if (formula === undefined) continue;
    const piece = pieceHere(formula, grams, weighIns);
    const key = `${bread} ${piece}`;
    const old = heaps.get(key);
    heaps.set(key, {
      formula,
      piece,
      grams: old?.grams === null ? null : grams,
      loaves: (old?.loaves ?? 0) + count,
      at: old ? earlier(old.at, at) : at,
    });
  }
  return [...heaps.values()];
}

/** Breads that were ordered and are not on the Book's list. */
function goneFrom(lines: readonly OrderLine[], formulas: readonly Formula[]): BatchTrouble[] {
  const gone = new Map<string, number>();
  for (const { bread, count } of lines) {
    if (formulas.some(({ id }) => id === bread)) continue;
    gone.set(bread, (gone.get(bread) ?? 0) + count);
  }
  return [...gone].map(([bread, loaves]) => ({
    bread,
    loaves,
    reason: { key: 'breadGone', values: { loaves } },
  }));
}

/**
 * The batches that a day's orders come to, in the Book's order, of one bread the light loaves first; what
 * cannot be baked with why: `breadGone` (loaves), or what `makeRecipe` refuses. No loaf is in both or in
 * neither. A loaf cut before it is handed over is a loaf like any other here.
 * Source: arithmetic. Failure: none; counts are whole, 1 or more.
 */
export function batchesOf(
  orders: readonly Pick<Order, 'at' | 'lines'>[],
  world: BatchWorld,
): { readonly batches: readonly Batch[]; readonly troubles: readonly BatchTrouble[] } {
  const { formulas, scale } = world;
  const lines = orders.flatMap(({ at, lines: own }) => own.map((line) => ({ ...line, at })));
  const heaps = heapsOf(lines, world).toSorted(
    (a, b) => formulas.indexOf(a.formula) - formulas.indexOf(b.formula) || a.piece - b.piece,
  );
  const batches: Batch[] = [];
  const troubles = goneFrom(lines, formulas);
  for (const heap of heaps) {
    for (const loaves of inBatches(heap.loaves)) {
      const { recipe, reason } = makeRecipe(heap.formula, { loaves, piece: heap.piece, scale });
      if (recipe) batches.push({ ...heap, loaves, recipe });
      else troubles.push({ bread: heap.formula.id, loaves, reason });
    }
  }
  return { batches, troubles };
}
