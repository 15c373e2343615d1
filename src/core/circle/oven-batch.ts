import type { Formula, Vessel } from '../formula/formula.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import { placesFor, takesHeat } from '../kitchen/places.ts';
import { potHolds } from '../kitchen/pot-holds.ts';
import { coolingEnds } from '../oven/cooling-ends.ts';
import { fitBake } from '../oven/fit-bake.ts';
import { pieceHere } from '../oven/piece-here.ts';
import type { TaughtLoss } from '../records/taught.ts';
import { MINUTE, type Grams, type Minutes } from '../units.ts';
import type { OrderLine } from './circle.ts';

/** Loaves of one bread and one size: what an oven has in it at one time. */
export interface OvenBatch {
  /** Its formula's id. */
  readonly bread: string;
  /** Dough of one piece. */
  readonly grams: Grams;
  readonly count: number;
  /** Side by side in one load; 0: nothing here may bake it. */
  readonly places: number;
  /** Lidded and open, fitted to the piece. */
  readonly bake: Minutes;
  readonly recovery: Minutes;
  /** From out of the oven until it is no longer warm in the hand, has cooled as its process wants, may be sliced. */
  readonly warm: Minutes;
  readonly cool: Minutes;
  readonly slice: Minutes;
  /** It waits in the fridge until it is loaded. */
  readonly cold: boolean;
}

/** What of a kitchen bread is baked in. */
export type BakesIn = Pick<Equipment, 'pots' | 'tins' | 'stones'>;

/** Pots that all lift their lid on a piece hold none of it. */
const fitsSomePot = ({ pots }: BakesIn, piece: Grams): boolean =>
  pots.some((pot) => takesHeat(pot) && (pot.litres === null || potHolds(pot.litres) >= piece));

const places = (kitchen: BakesIn, vessel: Vessel, piece: Grams): number =>
  vessel === 'pot' && !fitsSomePot(kitchen, piece) ? 0 : placesFor(kitchen, vessel, piece);

/**
 * So many loaves of a bread as this kitchen bakes them, in pieces of `grams` of dough. Minutes in the
 * oven by `fitBake`. Under 35 °C after one to two hours (seen in print); fetched after the cooling of its
 * process, which a dense rye needs long after it is cold; sliced as `coolingEnds` has it.
 */
export function ovenBatch(
  { id, piece, process }: Formula,
  kitchen: BakesIn,
  count: number,
  grams: Grams = piece,
): OvenBatch {
  const { lidded, open } = fitBake(process, piece, grams);
  const { bagAt, sliceAt } = coolingEnds(0, process.cool);
  return {
    bread: id,
    grams,
    count,
    places: places(kitchen, process.vessel, grams),
    bake: lidded + open,
    recovery: process.recovery,
    warm: bagAt / MINUTE,
    cool: Math.max(process.cool, bagAt / MINUTE),
    slice: sliceAt / MINUTE,
    cold: process.retard > 0,
  };
}

/** Whether two are of one bread and one size. */
export const sameBatch = (a: OvenBatch, b: OvenBatch): boolean =>
  a.bread === b.bread && a.grams === b.grams;

/** Batches with others added, those of one bread and size together; none of no loaf. */
export function together(
  some: readonly OvenBatch[],
  more: readonly OvenBatch[],
): readonly OvenBatch[] {
  const all = new Map<string, OvenBatch>();
  for (const batch of [...some, ...more]) {
    if (batch.count <= 0) continue;
    const key = `${batch.grams} ${batch.bread}`;
    const known = all.get(key);
    all.set(key, known ? { ...known, count: known.count + batch.count } : batch);
  }
  return [...all.values()];
}

/**
 * What a list of order lines comes to: one batch a bread and size, in pieces as `pieceHere` has them by
 * what loaves weighed in this kitchen. `unknown`: breads that the Book has no more.
 */
export function ovenBatches(
  lines: readonly OrderLine[],
  formulas: readonly Formula[],
  kitchen: BakesIn,
  weighIns: readonly TaughtLoss[],
): { readonly batches: readonly OvenBatch[]; readonly unknown: readonly string[] } {
  const counts = new Map<string, OrderLine>();
  for (const line of lines) {
    const key = `${line.grams ?? ''} ${line.bread}`;
    const known = counts.get(key);
    counts.set(key, known ? { ...known, count: known.count + line.count } : line);
  }
  const books = new Map(formulas.map((formula) => [formula.id, formula]));
  const unknown = new Set<string>();
  const batches = [...counts.values()].flatMap(({ bread, count, grams }) => {
    const formula = books.get(bread);
    if (formula === undefined) {
      unknown.add(bread);
      return [];
    }
    const piece = pieceHere(formula, grams, weighIns);
    return [ovenBatch(formula, kitchen, count, piece)];
  });
  return { batches: together([], batches), unknown: [...unknown] };
}
