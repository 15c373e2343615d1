import { positionOf } from '../../../../machines/kitchen/position.ts';
import { askInput } from '../../../core/day/laid/ask-input.ts';
import type { DayAsk, DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { LiveDay } from '../../../core/day/laid/live-input.ts';
import type { PlanInput, PlanResult } from '../../../core/day/plan/types.ts';
import { MINUTE } from '../../../core/units.ts';
import { askWorldOf } from '../../ask-world.ts';
import type { House } from '../../house.ts';

/** A plan's day as it stands in the kitchen; null where its question cannot be asked any more. */
export function liveDayOf(house: House, plan: DayPlan, ask: DayAsk = plan.ask): LiveDay | null {
  const { input } = askInput(ask, askWorldOf(house));
  if (input === null) return null;
  const kitchen = house.kitchen();
  return {
    plan: { ...plan, ask },
    asked: input,
    kitchen: positionOf(kitchen),
    loavesOf: (bake) => kitchen.bakes[bake]?.context.loaves ?? [],
    now: Math.floor(house.now() / MINUTE) * MINUTE,
  };
}

/** The last answer to a question; one that a newer question stops is never told. */
export async function layOnce(house: House, input: PlanInput, why?: false): Promise<PlanResult> {
  if (input.batches.length === 0) return { fits: null, bound: 0 };
  const planner = await house.planner();
  return new Promise((resolve) => {
    planner.lay(input, (result, isLast) => isLast && resolve(result), why);
  });
}
