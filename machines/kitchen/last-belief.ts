import {
  carriedBelief,
  floursOf,
  sinceLook,
  TEACH,
  toldBy,
  type TaughtVigour,
} from '../../src/core/readiness/carry-over.ts';
import { OPENING_BELIEF, type Belief } from '../../src/core/readiness/belief.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import type { Starter } from '../../src/core/records/starter.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Kitchen, StartFact } from './kitchen.ts';

/** Which start it is asked for, or any instant. */
type Of = Pick<StartFact, 'id' | 'at'>;

/**
 * The bakes of this starter, the oldest first, as far as they still stand: one whose start was taken
 * back never was, and one of before the starter was another's is left aside.
 */
const bakesOf = ({ starts, standing, base, starter }: Kitchen): readonly StartFact[] => {
  const stands = new Set(standing.map((fact) => fact.id));
  return Object.values(starts)
    .filter(
      ({ id, at }) =>
        at >= (starter.renewed ?? at) && (stands.has(id) || (base !== null && at <= base.now)),
    )
    .toSorted((a, b) => a.at - b.at);
};

const beliefIn = ({ results }: Pick<StartFact, 'results'>, bake: string): Belief | undefined =>
  results?.find(({ who, belief }) => who === bake && belief)?.belief;

/** What each start's bake last told of the starter since the last jump, by the start's id. */
const toldSince = (
  { standing }: Kitchen,
  bakes: readonly StartFact[],
): ReadonlyMap<string, { readonly at: Instant; readonly belief: Belief }> => {
  const here = new Set(standing.map(({ id }) => id));
  // A bake's name may come again: whose it is, its latest start says.
  const running = new Map(
    bakes.filter(({ id }) => !here.has(id)).map(({ bake, id }) => [bake, id]),
  );
  const told = new Map<string, { at: Instant; belief: Belief }>();
  for (const fact of standing) {
    if (fact.kind === 'start') {
      running.set(fact.bake, fact.id);
      continue;
    }
    for (const { who, belief } of fact.results ?? []) {
      const start = running.get(who);
      if (belief && start !== undefined) told.set(start, { at: fact.at, belief });
    }
  }
  return told;
};

/** What the last start before a jump had found, as it is pinned; of an older log what it began with. */
const foundBefore = (
  { base, starter }: Kitchen,
  bakes: readonly StartFact[],
): readonly TaughtVigour[] => {
  const last = bakes.findLast(({ at }) => base !== null && at <= base.now);
  if (last === undefined) return [];
  const found = last.results?.find(({ who, vigours }) => who === last.bake && vigours)?.vigours;
  if (found) return found.filter(({ at }) => at >= (starter.renewed ?? at));
  const began = beliefIn(last, last.bake);
  const told = began && toldBy(OPENING_BELIEF, began);
  const flours = floursOf(last.recipe.formula);
  return told ? [{ ...told, start: 'before', at: last.at, flours }] : [];
};

/**
 * What the bakes of this starter told of it before a start, each by itself, oldest first: those of this
 * fold as their readings stand now, and before a jump what the last start before it had found.
 */
export const vigoursOf = (kitchen: Kitchen, of: Of): readonly TaughtVigour[] => {
  const bakes = bakesOf(kitchen).filter(({ id, at }) => id !== of.id && at <= of.at);
  const told = toldSince(kitchen, bakes);
  const taught = new Map(foundBefore(kitchen, bakes).map((one) => [one.start, one]));
  for (const start of bakes) {
    const last = told.get(start.id);
    if (last === undefined) continue;
    const alone = toldBy(beliefIn(start, start.bake) ?? OPENING_BELIEF, last.belief);
    const flours = floursOf(start.recipe.formula);
    if (alone) taught.set(start.id, { ...alone, start: start.id, at: last.at, flours });
    else taught.delete(start.id);
  }
  return [...taught.values()];
};

/** The same, as many as teach: what a start pins. */
export const teaching = (kitchen: Kitchen, of: Of): readonly TaughtVigour[] =>
  vigoursOf(kitchen, of).slice(-TEACH);

/**
 * What is believed of the starter before a start: what its bakes foretell. What it showed by itself
 * after the last of them (`own`) goes before it: it was weighed in with it. `formula`: of the bake to
 * come; null: as the last one's.
 */
export const believedBefore = (
  kitchen: Kitchen,
  of: Of,
  formula: Formula | null,
  own: Starter['known'] | null = kitchen.starter.weighed ?? kitchen.starter.known,
): Belief => {
  const past = vigoursOf(kitchen, of);
  if (own && own.at >= (past.at(-1)?.at ?? own.at)) return sinceLook(own.belief);
  return carriedBelief(past, formula && floursOf(formula));
};

/** How many bakes taught something of this starter. */
export const bakesTaught = (kitchen: Kitchen): number =>
  vigoursOf(kitchen, { id: '', at: kitchen.now }).length;
