import { fedRecipe } from '../../../machines/kitchen/fed.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { seenBy } from '../../../machines/kitchen/seen-by.ts';
import { ratioOf, ripeAt, type FeedInput } from '../../core/day/feed-plan.ts';
import type { Recipe } from '../../core/formula/recipe.ts';
import { feed } from '../../core/speech/words/feed.ts';
import { weighLines } from '../../core/speech/words/weigh.ts';
import { said } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showNumber } from '../../core/speech/numbers.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { BenchView } from './view.ts';

/** What a feed made now is reckoned from. */
export const feedInput = (kitchen: Kitchen, { bake }: Focus, now: Instant): FeedInput => ({
  recipe: bake.context.recipe,
  kitchen: bake.context.kitchen,
  seen: seenBy(kitchen, bake),
  prior: bake.context.belief,
  now,
});

/** '1 : 5 : 5', to half a part below ten. */
export const showRatio = (recipe: Recipe): string => {
  const part = (n: number): string => showNumber(n < 10 ? Math.round(n * 2) / 2 : Math.round(n));
  const { flour, water } = ratioOf(recipe);
  return `1 : ${part(flour)} : ${part(water)}`;
};

/** The bake with its feed as the starter was weighed: its other lines follow from it. */
export function fedFocus(kitchen: Kitchen, focus: Focus): Focus {
  const recipe = fedRecipe(kitchen, focus.bake);
  if (recipe === focus.bake.context.recipe) return focus;
  const bake = { ...focus.bake, context: { ...focus.bake.context, recipe } };
  return { ...focus, bake };
}

/** No minute is foretold of what grows. Judgement. */
const QUARTER = 15 * MINUTE;
/** Nor is it reckoned anew so often that what is said could differ from what is shown. */
const STEP = 5 * MINUTE;

/** At the line of the starter: when such a feed is ripe, and the way to another hour. */
export function withRipeHour(
  view: BenchView,
  kitchen: Kitchen,
  focus: Focus,
  hour: (at: Instant) => string,
  now: Instant,
): BenchView {
  const { deed } = view.slab;
  if (view.stage !== 'levain.feed' || deed?.kind !== 'press' || deed.item !== 'seed') return view;
  const input = feedInput(kitchen, focus, Math.floor(now / STEP) * STEP);
  const likely = ripeAt(input);
  if (likely === null) return view;
  const at = Math.round(likely / QUARTER) * QUARTER;
  const [line = ''] = view.spoken.split(/\.(?:\s|$)/);
  return {
    ...view,
    lines: [],
    // Once the starter is in, the hour is settled: it is asked while it can still be another.
    detail: view.detail === weighLines.weighRough ? weighLines.weighRough : feed.planned,
    target: {
      value: hour(at),
      label: feed.ripe,
      range: fill(feed.ratio, { ratio: showRatio(input.recipe) }),
      opens: 'feedHour',
    },
    spoken: fill(feed.spoken, { line, ...said({ time: hour(at) }) }),
  };
}
