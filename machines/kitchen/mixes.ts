import { reckonedDough } from '../../src/core/day/mix-water.ts';
import type { MixInput } from '../../src/core/day/mix-known.ts';
import { LEARNED_AFTER } from '../../src/core/heat/learned.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { Instant } from '../../src/core/units.ts';
import { fedRecipe } from './fed.ts';
import type { BakeSnapshot, Kitchen, StartFact } from './kitchen.ts';
import { seenBy } from './seen-by.ts';

/** Written with what a mix taught. */
const MIX_MODEL = 'mix-1';

/** What a start found learned, as it is pinned. */
const pinnedOffsets = (start: StartFact | undefined): readonly number[] =>
  start?.results?.find((result) => result.who === start.bake && result.offsets)?.offsets ?? [];

/** What earlier mixes of this kitchen taught a bake as it began, K, oldest first. */
export const offsetsOf = ({ starts }: Kitchen, { context }: BakeSnapshot): readonly number[] =>
  pinnedOffsets(starts[context.start]);

/**
 * What all mixes before a start taught: those of this fold, each by its last measure, and before a
 * jump what the last start before it had found. A mix measured between the two is lost.
 */
export const offsetsBefore = (
  { standing, starts, base }: Kitchen,
  { id }: Pick<StartFact, 'id'>,
): readonly number[] => {
  const last = Object.values(starts)
    .filter((start) => start.id !== id && base !== null && start.at <= base.now)
    .toSorted((a, b) => a.at - b.at)
    .at(-1);
  const mixes = new Map<string, number>();
  for (const { results = [] } of standing) {
    for (const { who, mixed } of results) {
      if (mixed) mixes.set(who, mixed.measured - mixed.reckoned);
    }
  }
  return [...pinnedOffsets(last), ...mixes.values()].slice(-LEARNED_AFTER);
};

/** All that the water of a running bake is reckoned from. */
export const mixInput = (kitchen: Kitchen, bake: BakeSnapshot): MixInput => ({
  recipe: fedRecipe(kitchen, bake),
  kitchen: bake.context.kitchen,
  entered: bake.context.entered,
  seen: seenBy(kitchen, bake),
  offsets: offsetsOf(kitchen, bake),
});

/** When the temperature was taken that a fact measures the mix by, and of which bake; else null. */
const measuredMix = (
  { standing, bakes }: Kitchen,
  fact: Fact,
): { bake: BakeSnapshot; at: Instant } | null => {
  const old = fact.kind === 'correct' ? standing.find(({ id }) => id === fact.target) : fact;
  if (old?.kind !== 'reading' || !('reading' in fact)) return null;
  const bake = bakes[old.bake];
  if (bake === undefined || fact.reading.what !== 'doughTemperature') return null;
  if (fact.kind === 'correct') {
    return old.results?.some(({ mixed }) => mixed) ? { bake, at: old.at } : null;
  }
  const { entered } = bake.context;
  // It led out of the measuring, so the bulk began with it.
  const led = [entered['bulk.between'], entered['bulk.proving']].includes(fact.at);
  return led && 'mix.temperature' in entered ? { bake, at: fact.at } : null;
};

/**
 * What the first temperature of a mixed dough says of the reckoning, or a correction of it. One kept
 * as odd teaches nothing. It names the stage that was left: no wait is judged by it.
 */
export const mixResult = (dry: Kitchen, fact: Fact): Result[] => {
  const found = measuredMix(dry, fact);
  if (found === null || !('reading' in fact) || !('celsius' in fact.reading)) return [];
  if (fact.reading.odd) return [];
  const { bake, at } = found;
  const reckoned = reckonedDough(mixInput(dry, bake), at);
  if (reckoned === null) return [];
  return [
    {
      who: bake.context.id,
      stage: 'mix.temperature',
      since: bake.context.entered['mix.temperature']!,
      marks: {},
      mixed: { reckoned, measured: fact.reading.celsius },
      model: MIX_MODEL,
    },
  ];
};
