import { loads, ovenMinutes } from '../oven/loads.ts';
import { MINUTE, type Grams, type Instant, type Minutes } from '../units.ts';
import { sameBatch, type OvenBatch } from './oven-batch.ts';

/** All loads of one batch, one after the other. Minutes after the first loading of the day. */
export interface Run {
  readonly batch: OvenBatch;
  readonly loads: number;
  readonly from: Minutes;
  readonly out: Minutes;
}

/** One load: never of two breads or sizes. */
export interface Load {
  readonly bread: string;
  readonly grams: Grams;
  readonly count: number;
  readonly from: Instant;
  readonly out: Instant;
}

/** When all of one bread and size is out, and can be bagged or sliced. */
export interface BreadOut {
  readonly bread: string;
  readonly grams: Grams;
  readonly count: number;
  readonly out: Instant;
  readonly coolAt: Instant;
  readonly sliceAt: Instant;
}

export interface OvenDay {
  readonly loads: readonly Load[];
  readonly breads: readonly BreadOut[];
  /** What nothing in this kitchen may bake. */
  readonly nowhere: readonly OvenBatch[];
  /** Null where nothing bakes. */
  readonly lastOut: Instant | null;
  /** From then on all of it is cool enough to be bagged: the earliest honest hour. */
  readonly coolAt: Instant | null;
}

/** What cools longest goes in first; what bakes nowhere is left out. */
const inTurn = (batches: readonly OvenBatch[]): readonly OvenBatch[] =>
  batches
    .filter(({ count, places }) => count > 0 && places > 0)
    .toSorted((a, b) => b.cool - a.cool);

/**
 * The day's batches through one oven, each ⌈loaves ÷ places⌉ loads long, the recovery between two loads
 * the longer one where they differ (judgement). What cools longest goes first: no other order has all of
 * it cool sooner where recoveries are alike. It takes no longer for many loaves than for few.
 * Source: arithmetic; the order is Jackson's rule for the longest tail first (1955), from memory.
 */
export function runsOf(batches: readonly OvenBatch[]): readonly Run[] {
  const runs: Run[] = [];
  for (const batch of inTurn(batches)) {
    const before = runs.at(-1);
    const { bake, recovery, count, places } = batch;
    const from = before ? before.out + Math.max(before.batch.recovery, recovery) : 0;
    const many = loads(count, places);
    const out = from + ovenMinutes(many, { preheat: 0, bake, recovery });
    runs.push({ batch, loads: many, from, out });
  }
  return runs;
}

/** Minutes from the first loading to the last loaf out; 0 where nothing bakes. */
export const bakingMinutes = (batches: readonly OvenBatch[]): Minutes =>
  runsOf(batches).at(-1)?.out ?? 0;

/** Minutes after the first loading until which some bread is warm, and from when it can be handed over. */
export interface CoolAfter {
  readonly warm: Minutes;
  readonly cool: Minutes;
}

/** When all of some batches of a day are cool (`sliced`: can be sliced); null where one bakes nowhere, or of none. */
export function coolAfter(
  batches: readonly OvenBatch[],
  of: readonly (OvenBatch & { readonly sliced?: boolean })[],
): CoolAfter | null {
  const runs = runsOf(batches);
  let [warm, cool] = [0, 0];
  for (const one of of) {
    const run = runs.find(({ batch }) => sameBatch(batch, one));
    if (run === undefined) return null;
    warm = Math.max(warm, run.out + run.batch.warm);
    cool = Math.max(cool, run.out + (one.sliced ? run.batch.slice : run.batch.cool));
  }
  return of.length === 0 ? null : { warm, cool };
}

const loadsOf = ({ batch, loads: many, from }: Run, first: Instant): readonly Load[] =>
  Array.from({ length: many }, (_, i) => {
    const at = first + (from + i * (batch.bake + batch.recovery)) * MINUTE;
    return {
      bread: batch.bread,
      grams: batch.grams,
      count: Math.min(batch.places, batch.count - i * batch.places),
      from: at,
      out: at + batch.bake * MINUTE,
    };
  });

/**
 * A bake day's oven: every load in order, and when each bread and all of it is cool. `first`: when the
 * first load goes in. Source: arithmetic, and as `runsOf`.
 *
 * @example
 * ovenDay([{ bread: 'wheat', grams: 900, count: 7, places: 3, bake: 50, recovery: 10, warm: 120, cool: 120, slice: 120, cold: true }], 0).lastOut // → 10200000
 * ovenDay([{ bread: 'wheat', grams: 900, count: 7, places: 3, bake: 50, recovery: 10, warm: 120, cool: 120, slice: 120, cold: true }], 0).coolAt // → 17400000
 */
export function ovenDay(batches: readonly OvenBatch[], first: Instant): OvenDay {
  const runs = runsOf(batches);
  const breads = runs.map(({ batch, out }) => {
    const { bread, grams, count, cool, slice } = batch;
    const at = first + out * MINUTE;
    return {
      bread,
      grams,
      count,
      out: at,
      coolAt: at + cool * MINUTE,
      sliceAt: at + slice * MINUTE,
    };
  });
  return {
    loads: runs.flatMap((run) => loadsOf(run, first)),
    breads,
    nowhere: batches.filter(({ count, places }) => count > 0 && places === 0),
    lastOut: breads.length === 0 ? null : Math.max(...breads.map(({ out }) => out)),
    coolAt: breads.length === 0 ? null : Math.max(...breads.map(({ coolAt }) => coolAt)),
  };
}
