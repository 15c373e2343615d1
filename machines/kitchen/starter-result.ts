import type { StarterInput } from '../../src/core/day/starter-wait.ts';
import { carriedBelief } from '../../src/core/readiness/carry-over.ts';
import { OPENING_BELIEF, type Belief } from '../../src/core/readiness/belief.ts';
import type { Fact, Result } from '../../src/core/records/fact.ts';
import type { Kitchen } from './kitchen.ts';
import { lastBelief } from './last-belief.ts';
import { STARTER } from './starter.ts';

/** What tells the starter its instants; the app gives the core's, tests a plain one. */
export type StarterModel = (
  input: StarterInput,
) => Pick<Result, 'marks' | 'belief' | 'doubt' | 'model'>;

/** What is believed of the starter now, before it shows anything new: what the last bake taught. */
export const starterBelief = (kitchen: Kitchen, of: Pick<Fact, 'id' | 'at'>): Belief => {
  const last = lastBelief(kitchen, of);
  return last === null ? OPENING_BELIEF : carriedBelief(last, last.formula);
};

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
  const prior = starterBelief(kitchen, fact);
  const said = model({ starter, now, prior, night: nightOf(fact) });
  return [{ who: STARTER, stage: put.where, since: put.at, ...said }];
};
