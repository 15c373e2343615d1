import { MINUTE } from '../../units.ts';
import { askInput } from './ask-input.ts';
import type { DayAsk } from './day-plan.ts';
import type { LiveDay } from './live-input.ts';
import type { LiveQuestion } from './live-question.ts';

/** A plan's day as it stands in the kitchen; null where its question cannot be asked any more. */
export function liveDayOf(
  { plan, world }: Pick<LiveQuestion, 'plan' | 'world'>,
  ask: DayAsk = plan.ask,
): LiveDay | null {
  const { input } = askInput(ask, world);
  const { running } = world;
  if (input === null || running === undefined) return null;
  return {
    plan: { ...plan, ask },
    asked: input,
    kitchen: running.places,
    loavesOf: (bake) => running.bakes.find((one) => one.bake === bake)?.loaves ?? [],
    now: Math.floor(world.now / MINUTE) * MINUTE,
  };
}
