import { doughToMix } from '../formula/dough-to-mix.ts';
import { handKilos } from '../kitchen/bowls.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import type { Grams, Minutes } from '../units.ts';
import { sameBatch, together, type OvenBatch } from './oven-batch.ts';
import type { CircleWays } from './circle.ts';
import { bakingMinutes } from './oven-day.ts';

/** What a bake day can run out of. `pots`: none that may be loaded hot and has room for the loaf. */
export const BOUNDS = ['oven', 'pots', 'fridge', 'bowls'] as const;
export type Bound = (typeof BOUNDS)[number];

/** What a bake day has. Null is *not said*, and then it limits nothing. */
export interface DayHas {
  /** From the first loading to the last loaf out. */
  readonly oven: Minutes | null;
  readonly fridge: Equipment['fridge']['holds'];
  readonly bowls: Equipment['bowls'];
}

/** `limits`: loaves more by each; null: no limit. `binds`: those of which there are least. */
export interface Room {
  readonly more: number | null;
  readonly binds: readonly Bound[];
  readonly limits: Readonly<Record<Bound, number | null>>;
}

const DAY_MINUTES = 1440;

/**
 * Minutes of the oven's hours; over midnight where they end no later than they begin. Null: not said.
 *
 * @example
 * ovenHours({ from: 480, to: 900 }) // → 420
 * ovenHours({ from: 1320, to: 360 }) // → 480
 */
export const ovenHours = (oven: CircleWays['oven']): Minutes | null =>
  oven === null ? null : oven.to - oven.from + (oven.to > oven.from ? 0 : DAY_MINUTES);

const cold = (batches: readonly OvenBatch[]): number =>
  batches.reduce((sum, batch) => sum + (batch.cold ? batch.count : 0), 0);

/** Dough of each bread: sizes of one bread are of one dough. */
function doughs(batches: readonly OvenBatch[]): ReadonlyMap<string, Grams> {
  const all = new Map<string, Grams>();
  for (const { bread, count, grams } of batches) {
    all.set(bread, (all.get(bread) ?? 0) + doughToMix(count, grams));
  }
  return all;
}

const bowlGrams = (bowls: Equipment['bowls']): Grams => handKilos(bowls) * 1000;

/** Bowls that so many batches fill; no bowl has two breads in it. */
const bowlsOf = (batches: readonly OvenBatch[], bowls: Equipment['bowls']): number =>
  [...doughs(batches).values()].reduce(
    (sum, grams) => sum + Math.ceil(grams / bowlGrams(bowls) - 1e-9),
    0,
  );

/** What batches use of a day: minutes of the oven, places in the fridge, bowls. */
export const usedOf = (
  batches: readonly OvenBatch[],
  { bowls }: Pick<DayHas, 'bowls'>,
): Readonly<Record<Exclude<Bound, 'pots'>, number>> => ({
  oven: bakingMinutes(batches),
  fridge: cold(batches),
  bowls: bowlsOf(batches, bowls),
});

/** What of a day these batches run past, in the order of BOUNDS; none where all of them fit. */
export function over(batches: readonly OvenBatch[], has: DayHas): readonly Bound[] {
  const some = batches.filter(({ count }) => count > 0);
  const past: Readonly<Record<Bound, boolean>> = {
    oven: has.oven !== null && bakingMinutes(some) > has.oven,
    pots: some.some(({ places }) => places === 0),
    fridge: has.fridge !== null && cold(some) > has.fridge,
    bowls: has.bowls.count !== null && bowlsOf(some, has.bowls) > has.bowls.count,
  };
  return BOUNDS.filter((bound) => past[bound]);
}

/** Loaves more by the oven's hours: what is free in loads there are, and in those that still go in. */
function ovenMore(one: OvenBatch, taken: readonly OvenBatch[], has: DayHas): number | null {
  if (has.oven === null || one.places === 0) return null;
  const spare = has.oven - bakingMinutes(taken);
  if (spare < 0) return 0;
  const known = taken.find((batch) => sameBatch(batch, one))?.count ?? 0;
  const free = Math.ceil(known / one.places) * one.places - known;
  // The first load of a bread may fall between two others; each one after it takes as long.
  const first = bakingMinutes(together(taken, [{ ...one, count: free + 1 }]));
  if (first > has.oven) return free;
  const each = one.bake + one.recovery;
  return free + (1 + Math.floor((has.oven - first) / each)) * one.places;
}

function bowlsMore(one: OvenBatch, taken: readonly OvenBatch[], { bowls }: DayHas): number | null {
  if (bowls.count === null) return null;
  const others = taken.filter(({ bread }) => bread !== one.bread);
  const own = doughs(taken).get(one.bread) ?? 0;
  const room = (bowls.count - bowlsOf(others, bowls)) * bowlGrams(bowls) - own;
  return Math.max(0, Math.floor(room / doughToMix(1, one.grams) + 1e-9));
}

/**
 * How many more loaves of one bread (`one`; its count is not looked at) a day takes beside what it has
 * taken, and what binds: the least of the oven's hours with what stands side by side in it, a pot that
 * takes it, the fridge's places (where it waits cold) and the bowls. A day that is over its hours takes
 * none. No longer for many loaves than for few.
 * Source: arithmetic.
 */
export function roomFor(one: OvenBatch, taken: readonly OvenBatch[], has: DayHas): Room {
  const limits: Room['limits'] = {
    oven: ovenMore(one, taken, has),
    pots: one.places === 0 ? 0 : null,
    fridge: has.fridge === null || !one.cold ? null : Math.max(0, has.fridge - cold(taken)),
    bowls: bowlsMore(one, taken, has),
  };
  const said = BOUNDS.filter((bound) => limits[bound] !== null);
  if (said.length === 0) return { more: null, binds: [], limits };
  const more = Math.min(...said.map((bound) => limits[bound]!));
  return { more, binds: said.filter((bound) => limits[bound] === more), limits };
}
