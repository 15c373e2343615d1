import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { chosenFeed } from '../core/day/laid/chosen-feed.ts';
import type { DayPlan } from '../core/day/laid/day-plan.ts';
import type { Deed } from '../core/records/fact.ts';

/** Its plan was read; what has to lie ready was not. */
const FROM = 'read.list';
const FEED = 'feed levain';

/** Begins a bake of a plan, once. Its id; null where the plan has none of that name that waits. */
export async function beginPlanned(
  name: string,
  plan: DayPlan | null,
  kitchen: () => Kitchen,
  take: (deed: Deed) => Promise<void>,
): Promise<string | null> {
  const asked = plan?.ask.bakes.find((one) => one.name === name);
  if (!plan || asked === undefined || asked.bake !== null) return null;
  const bake = `bake-${kitchen().seq + 1}`;
  const { recipe } = asked;
  const feed = plan.touches.find((touch) => touch.batch === name && touch.name === FEED);
  await take({
    kind: 'start',
    bake,
    loaves: Array.from({ length: recipe.loaves }, (_, i) => `${bake}.${i + 1}`),
    from: FROM,
    recipe: chosenFeed(recipe, feed?.choice),
    kitchen: plan.ask.kitchen,
    planned: { plan: plan.id, name },
  });
  return bake in kitchen().bakes ? bake : null;
}
