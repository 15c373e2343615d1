import type { StarterInput } from '../../src/core/day/starter-wait.ts';
import type { Belief } from '../../src/core/readiness/belief.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { Kitchen } from './kitchen.ts';
import { believedBefore } from './last-belief.ts';
import { STARTER } from './starter.ts';

/** What tells the starter its instants; the app gives the core's, tests a plain one. */
export type StarterModel = (
  input: StarterInput,
) => Pick<Result, 'marks' | 'belief' | 'doubt' | 'model'>;

type Of = Pick<Fact, 'id' | 'at'>;

/** What is believed of the starter now: what its bakes taught, or it showed by itself since. */
export const starterBelief = (kitchen: Kitchen, of: Of): Belief =>
  believedBefore(kitchen, of, null);

/** What was believed as its last feed began: what was seen since is weighed in anew, never twice. */
export const beliefAtFeed = (kitchen: Kitchen, of: Of): Belief =>
  believedBefore(kitchen, of, null, kitchen.starter.known ?? null);

/** A feed, another place, a sign of how it rises, what a bake kept back: each has instants of its own. */
const asks = (fact: Fact): boolean =>
  fact.kind === 'starter'
    ? ['fed', 'put', 'rose', 'topped'].includes(fact.did)
    : fact.kind === 'press' && fact.act === 'starterKept' && fact.grams !== undefined;

const nightOf = (fact: Fact) => ('night' in fact && fact.night ? fact.night : null);

/** The starter's instants, for a fact that moved it. */
export const starterResult = (kitchen: Kitchen, fact: Fact, model: StarterModel): Result[] => {
  const { starter, now } = kitchen;
  const { put } = starter;
  if (put === undefined || !asks(fact)) return [];
  const prior = beliefAtFeed(kitchen, fact);
  const said = model({ starter, now, prior, night: nightOf(fact) });
  return [{ who: STARTER, stage: put.where, since: put.at, ...said }];
};
