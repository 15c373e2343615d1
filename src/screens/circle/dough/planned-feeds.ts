import type { BaseDough } from '../../../core/circle/base-dough.ts';
import type { Batch } from '../../../core/circle/batches.ts';
import { chosenFeed } from '../../../core/day/laid/chosen-feed.ts';
import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { WeighLine } from '../../../core/formula/recipe.ts';
import type { Instant } from '../../../core/units.ts';

/** As the planner names it. */
const FEED = 'feed levain';

/** When a plan feeds the levain of one batch, and in what ratio. */
export interface PlannedFeed {
  readonly batch: Batch;
  readonly at: Instant;
  readonly ratio: string | null;
}

/** Its bread is the plan's: as many loaves of as much dough, ready within that day. */
export function plannedFeeds(
  { batches }: Pick<BaseDough, 'batches'>,
  plan: DayPlan | null,
  isThatDay: (ready: Instant) => boolean,
): readonly PlannedFeed[] {
  if (plan === null) return [];
  const left = plan.ask.bakes.filter(({ name }) => {
    const ready = plan.ready.find(({ batch }) => batch === name);
    return ready !== undefined && isThatDay(ready.at);
  });
  return batches.flatMap((batch) => {
    const { formula, loaves, piece } = batch;
    const at = left.findIndex(
      ({ recipe }) =>
        recipe.formula.id === formula.id && recipe.loaves === loaves && recipe.piece === piece,
    );
    if (at < 0) return [];
    const [{ name } = { name: '' }] = left.splice(at, 1);
    const touch = plan.touches.find((one) => one.batch === name && one.name === FEED);
    return touch ? [{ batch, at: touch.at, ratio: touch.choice ?? null }] : [];
  });
}

/** What is weighed into the one jar: fed as the plan chose it, where it chose alike for all of it. */
export function feedLines(
  { batches, feed }: BaseDough,
  planned: readonly PlannedFeed[],
): readonly WeighLine[] {
  const [first, ...others] = planned;
  const alike = first && others.every(({ ratio }) => ratio === first.ratio);
  if (!alike || planned.length < batches.length || first.ratio === null) return feed;
  const { recipe } = batches[0]!;
  return chosenFeed({ ...recipe, lines: { ...recipe.lines, feed } }, first.ratio).lines.feed;
}
