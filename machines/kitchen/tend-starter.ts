import type { Fact, Result } from '../../src/core/records/fact.ts';
import { starterFault } from '../../src/core/records/read-starter.ts';
import { NO_STARTER, type Starter } from '../../src/core/records/starter.ts';
import { DAY, type Instant } from '../../src/core/units.ts';
import type { Kitchen } from './kitchen.ts';
import { remindAt } from './starter.ts';
import type { Stepped } from './step.ts';

/** A reminder is put off by a week at most. Judgement. */
const LATEST = 7 * DAY;

type Tended = Extract<Fact, { kind: 'starter' }>;

/** What the models said of a feed, or of a place, that is over is of no use any more. */
const moved = ({ doubt: _, ...starter }: Starter, put: Starter['put']): Starter =>
  put === undefined ? starter : { ...starter, put, marks: {} };

const tended = (starter: Starter, fact: Tended): Starter | null => {
  const { at } = fact;
  switch (fact.did) {
    case 'fed': {
      const { flour, celsius } = fact;
      const { weighed, ...rest } = starter;
      const known = weighed ?? rest.known;
      const next = moved(
        { ...rest, ...(known ? { known } : {}) },
        { at, where: 'counter', fresh: true },
      );
      return { ...next, fed: { at, flour, celsius }, signs: [] };
    }
    case 'put':
      return starter.put?.where === fact.where ? null : moved(starter, { at, where: fact.where });
    case 'kept':
      return { ...starter, kept: { at, grams: fact.grams } };
    case 'named':
      return { ...starter, name: fact.name };
    case 'renewed':
      return { ...NO_STARTER, renewed: at };
    case 'rose':
    case 'topped': {
      // Elsewhere, or long after, it says nothing of how fast it rises.
      if (!starter.put?.fresh) return null;
      const sign = fact.did === 'rose' ? { at, percent: fact.percent } : { at, top: fact.top };
      return { ...starter, signs: [...starter.signs, sign] };
    }
    case 'later': {
      const remind = remindAt(starter);
      const soon = fact.until > at && fact.until <= at + LATEST;
      if (remind === null || remind > at || !soon) return null;
      return { ...starter, marks: { ...starter.marks, remind: fact.until } };
    }
  }
};

/** One deed of the starter's; not taken where it makes no sense now. */
export const tend = (kitchen: Kitchen, fact: Tended): Stepped => {
  const next = starterFault({ ...fact }) ? null : tended(kitchen.starter, fact);
  return next === null
    ? { kitchen, taken: false, says: [] }
    : { kitchen: { ...kitchen, starter: next }, taken: true, says: [] };
};

/**
 * What a bake keeps back of its levain is the starter of the next one: fed when the levain was, and
 * in the fridge from now on, as the bench says. Older logs do not say how much; nothing follows then.
 */
export const keptBack = (
  stepped: Stepped,
  before: Kitchen,
  { who, act, grams, at }: Extract<Fact, { kind: 'press' }>,
): Stepped => {
  const bake = before.bakes[who];
  if (!stepped.taken || act !== 'starterKept' || grams === undefined || !bake) return stepped;
  const { entered, recipe, kitchen: celsius } = bake.context;
  const { seed, flour } = recipe.formula.levain.feed;
  const fed = entered['levain.feed'] ?? entered['levain.ripening'];
  const next: Starter = {
    ...moved(stepped.kitchen.starter, { at, where: 'fridge' }),
    kept: { at, grams },
    signs: [],
  };
  const starter =
    fed === undefined ? next : { ...next, fed: { at: fed, flour: flour / seed, celsius } };
  return { ...stepped, kitchen: { ...stepped.kitchen, starter } };
};

/** What the models said, where it still stands as they were asked. */
export const starterJudged = (kitchen: Kitchen, result: Result, at: Instant): Kitchen => {
  const { starter } = kitchen;
  const { marks, belief, doubt, since } = result;
  if (starter.put?.at !== since) return kitchen;
  const { doubt: _, ...rest } = starter;
  return {
    ...kitchen,
    starter: {
      ...rest,
      marks,
      ...(belief ? { weighed: { at, belief } } : {}),
      ...(doubt ? { doubt } : {}),
    },
  };
};
