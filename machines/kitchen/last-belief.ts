import type { PastBelief } from '../../src/core/readiness/carry-over.ts';
import type { Belief } from '../../src/core/readiness/belief.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import type { Starter } from '../../src/core/records/starter.ts';
import type { Kitchen, StartFact } from './kitchen.ts';

/**
 * The bakes of this starter, the latest first, as far as they still stand: one whose start was taken
 * back never was, and one of before the starter was another's is left aside.
 */
const bakesOf = ({ starts, standing, base, starter }: Kitchen): readonly StartFact[] => {
  const stands = new Set(standing.map((fact) => fact.id));
  return Object.values(starts)
    .filter(
      ({ id, at }) =>
        at >= (starter.renewed ?? at) && (stands.has(id) || (base !== null && at <= base.now)),
    )
    .toSorted((a, b) => b.at - a.at);
};

type Told = Pick<StartFact, 'results'>;
const beliefIn = (told: Told | undefined, bake: string): Belief | undefined =>
  told?.results?.find(({ who, belief }) => who === bake && belief)?.belief;

/** What last told a belief of the starter in this bake, since the last jump. */
const lastTold = ({ standing }: Kitchen, bake: string): Fact | undefined =>
  standing.findLast((fact) => beliefIn(fact, bake));

/**
 * What was believed of the starter at the end of the last bake before this one, as far as the fold
 * knows: since the last jump by every result, before it by what a bake began with. What the starter
 * showed by itself after that (`own`) goes before it: it was weighed in with it.
 */
export const lastBelief = (
  kitchen: Kitchen,
  { id, at }: Pick<StartFact, 'id' | 'at'>,
  own: Starter['known'] | null = kitchen.starter.weighed ?? kitchen.starter.known,
): PastBelief | null => {
  for (const start of bakesOf(kitchen)) {
    if (start.id === id || start.at > at) continue;
    const told = lastTold(kitchen, start.bake) ?? start;
    const belief = beliefIn(told, start.bake);
    if (!belief) continue;
    const { formula } = start.recipe;
    return own && own.at >= told.at ? { formula, belief: own.belief } : { formula, belief };
  }
  return own ? { formula: null, belief: own.belief } : null;
};

/**
 * How many bakes taught something of this starter: those that ended with another belief than they
 * began with. Of one before the last jump the next bake's beginning tells.
 */
export const bakesTaught = (kitchen: Kitchen): number => {
  const bakes = bakesOf(kitchen);
  return bakes.filter((start, i) => {
    const began = beliefIn(start, start.bake);
    const next = bakes[i - 1];
    const told = beliefIn(lastTold(kitchen, start.bake), start.bake);
    const ended = told ?? (next && beliefIn(next, next.bake));
    return began !== undefined && ended !== undefined && ended.mean !== began.mean;
  }).length;
};
