import { feedRatio } from '../clock/feed-ratio.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { ripeGrowth, seedShare, USABLE } from '../clock/levain-ripe.ts';
import { TAU } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import type { Recipe } from '../formula/recipe.ts';
import { feedMass, refed } from '../formula/refed.ts';
import type { Belief } from '../readiness/belief.ts';
import type { Seen } from '../records/seen.ts';
import { HOUR, type Celsius, type Instant } from '../units.ts';
import { temperaturePath } from './dough-path.ts';
import { HORIZON } from './window.ts';

/** A levain about to be fed. */
export interface FeedInput {
  readonly recipe: Recipe;
  readonly kitchen: Celsius;
  readonly seen: readonly Seen[];
  readonly prior: Belief;
  readonly now: Instant;
}

const pathOf = ({ kitchen, seen, now }: FeedInput) =>
  temperaturePath({
    kitchen,
    seen: seen.filter(({ reading }) => reading.what === 'kitchenTemperature'),
    begin: now,
    hours: HORIZON,
    tau: TAU.jar,
  });

/** The vigour of a starter as it is believed, in the middle. */
const vigour = ({ prior }: FeedInput): number => Math.exp(prior.mean);

/** When a levain fed now by its recipe is likely ripe; null where that is too far to be seen. */
export function ripeAt(input: FeedInput): Instant | null {
  const ripe = ripeGrowth(seedShare(input.recipe.formula.levain));
  const hours = readyCurve(pathOf(input), 0, HORIZON, () => ripe)(vigour(input));
  return hours === null ? null : Math.round(input.now + hours * HOUR);
}

/** Flour and water for one part of starter. */
export interface Ratio {
  readonly flour: number;
  readonly water: number;
}

export const ratioOf = ({ formula }: Pick<Recipe, 'formula'>): Ratio => {
  const { feed, hydration } = formula.levain;
  return { flour: feed.flour / feed.seed, water: (hydration * feed.flour) / feed.seed };
};

/**
 * How a levain fed now by its recipe stands at an hour: usable, not yet, or past it. Usable is 1.4 of
 * growth either side of the ripest (practice).
 */
export function feedStands(input: FeedInput, at: Instant): 'early' | 'fits' | 'late' {
  const grown = vigour(input) * theta(pathOf(input), 0, Math.max(0, at - input.now) / HOUR);
  const off = grown - ripeGrowth(seedShare(input.recipe.formula.levain));
  return off < -USABLE ? 'early' : off > USABLE ? 'late' : 'fits';
}

/** Less fresh flour than this for one part of starter is no feed. Judgement. */
const LEAST = 0.5;

/** A feed that is ripest at an hour. `doubt`: outside 1:1 to 1:20, where nothing bears the clock out. */
export interface FeedFor {
  readonly recipe: Recipe;
  readonly doubt: boolean;
}

/**
 * The feed of as much levain that is ripest at an hour, to the scale's own step of starter; null where
 * none is: too soon for any feed, or less starter than the scale can show.
 */
export function feedFor(input: FeedInput, at: Instant): FeedFor | null {
  const { recipe } = input;
  const { hydration } = recipe.formula.levain;
  const grown = theta(pathOf(input), 0, Math.max(0, at - input.now) / HOUR);
  const ratio = feedRatio(grown, vigour(input), { seed: hydration, levain: hydration });
  const line = recipe.lines.feed.find(({ item }) => item === 'seed');
  if (ratio === null || ratio.flour < LEAST || line === undefined) return null;
  const exact = feedMass(recipe) / (1 + ratio.flour + ratio.water);
  const tenths = Math.round(line.division * 10);
  const seed = (Math.round((exact * 10) / tenths) * tenths) / 10;
  if (seed <= 0) return null;
  return { recipe: refed(recipe, seed), doubt: ratio.doubt };
}
