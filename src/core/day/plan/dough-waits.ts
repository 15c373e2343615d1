import { gamma } from '../../clock/gamma.ts';
import { ripeGrowth, seedShare, USABLE } from '../../clock/levain-ripe.ts';
import type { Recipe } from '../../formula/recipe.ts';
import type { Belief } from '../../readiness/belief.ts';
import type { BakeStage } from '../../records/stage.ts';
import { MINUTE, type Celsius, type Instant, type Minutes } from '../../units.ts';
import { waitFor } from '../waits.ts';
import type { Feed, Wait } from './types.ts';

/** Minutes to the slot before, after, and nearest. */
export const fivesDown = (minutes: Minutes): Minutes => Math.floor(minutes / 5) * 5;
export const fivesUp = (minutes: Minutes): Minutes => Math.ceil(minutes / 5) * 5;
export const fives = (minutes: Minutes): Minutes => Math.round(minutes / 5) * 5;

/** Points for going all the way to a limit. Judgement: the loaf is made in the bulk. */
const WEIGHT = { levain: 6, bulk: 10, proof: 8 } as const;

/** Parts of flour for one of starter, and points for the unusual ones. Common practice, no source. */
const FEEDS = [
  { flour: 1, extra: 0.2 },
  { flour: 2, extra: 0 },
  { flour: 5, extra: 0 },
  { flour: 10, extra: 0.2 },
] as const;
/** A dough may stand so much longer than a slow starter takes, before it is too late. Judgement. */
export const LATEST_AND: Minutes = 30;
/** Nearer to the ripest than this share of its time, nothing is lost. Judgement. */
const RIPE_SHARE = 0.1;

/**
 * The feeds to choose from: each usable while its growth is within 1.4 of the ripest, free within a
 * tenth of its time, for a starter of vigour v in a jar as warm as the kitchen. Source: the dough clock.
 */
export function feedsFor({ formula }: Recipe, kitchen: Celsius, vigour: number): Feed[] {
  const { hydration } = formula.levain;
  const minutes = (growth: number): Minutes => (growth / (vigour * gamma(kitchen))) * 60;
  return FEEDS.map(({ flour, extra }) => {
    const ripest = ripeGrowth(seedShare({ hydration, feed: { seed: 1, flour } }));
    const ripe = minutes(ripest);
    return {
      name: `1:${flour}:${Math.round(flour * hydration * 10) / 10}`,
      extra,
      min: fivesUp(minutes(Math.max(0, ripest - USABLE))),
      typicalFrom: fives(ripe * (1 - RIPE_SHARE)),
      typicalTo: fives(ripe * (1 + RIPE_SHARE)),
      max: fivesDown(minutes(ripest + USABLE)),
      weightShort: WEIGHT.levain,
      weightLong: WEIGHT.levain,
    };
  });
}

/** What is asked of the dough clock before anything is mixed. */
export interface Foretold {
  readonly recipe: Recipe;
  readonly kitchen: Celsius;
  readonly belief: Belief;
}

const marksOf = (
  { recipe, kitchen, belief }: Foretold,
  stage: BakeStage,
  now: Instant,
  entered: Readonly<Record<string, Instant>>,
): Readonly<Record<string, Instant>> =>
  waitFor({
    stage,
    now,
    recipe,
    kitchen,
    entered,
    touches: recipe.process.touches.length,
    prior: belief,
    seen: [],
    done: [],
    again: false,
  }).marks;

/** A quick and a slow starter's time as limits, likely ± 10 min free, half an hour more at the long end. */
function windowWait(marks: Readonly<Record<string, Instant>>, from: Instant, weight: number): Wait {
  const minutes = (mark: string): Minutes => (marks[mark]! - from) / MINUTE;
  const likely = fives(minutes('likely'));
  const min = Math.max(0, Math.min(fivesDown(minutes('earliest')), likely - 10));
  return {
    min,
    typicalFrom: Math.max(min, likely - 10),
    typicalTo: likely + 10,
    max: Math.max(fivesUp(minutes('latest') + LATEST_AND), likely + 10),
    weightShort: weight,
    weightLong: weight,
  };
}

/** The bulk's wait from the end of the second mix on; the rest before it, unsalted, counts. */
export function bulkOf(foretold: Foretold, mixing: Minutes, salting: Minutes): Wait {
  const work = (mixing + foretold.recipe.process.rest) * MINUTE;
  const from = work + salting * MINUTE;
  const entered = { 'mix.first': 0, 'mix.work': work, 'bulk.proving': from };
  return windowWait(marksOf(foretold, 'bulk.proving', from, entered), from, WEIGHT.bulk);
}

/** A warm proof's wait from the end of the shaping on, the dough divided at 0. */
export function proofOf(foretold: Foretold, shaped: Minutes): Wait {
  const from = shaped * MINUTE;
  const marks = marksOf(foretold, 'proof.warm', from, { 'shape.divide': 0, 'proof.warm': from });
  return windowWait(marks, from, WEIGHT.proof);
}

/** Minutes on the counter before the fridge, from the starter's vigour. */
export function counterOf(foretold: Foretold, shaped: Minutes): Minutes {
  const from = shaped * MINUTE;
  const marks = marksOf(foretold, 'shape.basket', from, { 'shape.divide': 0 });
  return fives((marks['fridge']! - from) / MINUTE);
}
