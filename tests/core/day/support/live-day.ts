import { plan } from '../../../../src/core/day/plan.ts';
import { expandFormula } from '../../../../src/core/day/plan/expand.ts';
import type { PlanInput, PlannedTouch } from '../../../../src/core/day/plan/types.ts';
import type { LiveKitchen } from '../../../../src/core/day/laid/at-touch.ts';
import type { AskedBake, DayPlan } from '../../../../src/core/day/laid/day-plan.ts';
import { liveInput, type LiveDay } from '../../../../src/core/day/laid/live-input.ts';
import type { Fitting } from '../../../../src/core/day/laid/moved.ts';
import type { Recipe } from '../../../../src/core/formula/recipe.ts';
import { OPENING_BELIEF } from '../../../../src/core/readiness/belief.ts';
import type { BakePlace, LanePlace, OvenPlace } from '../../../../src/core/records/position.ts';
import { RECIPE } from '../../../machines/support/recipe.ts';
import { MONDAY } from './instances.ts';

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
/** 0 is a Monday: Thursday 3, Friday 4, Saturday 5. */
export const at = (day: number, hour: number, minute = 0): number =>
  MONDAY + (day * 24 + hour) * HOUR + minute * MINUTE;

export const NAME = 'cherry and hazelnut';

const place = { byDue: false, answers: {}, tasks: {} } as const;

export const OVEN_OFF: OvenPlace = {
  ...place,
  stage: 'off',
  marks: {},
  entered: {},
  vessel: 'pot',
  waiting: [],
  soon: false,
  out: [],
};

export const bakeAt = (
  stage: string,
  entered: Readonly<Record<string, number>>,
  more: Partial<BakePlace> = {},
): BakePlace => ({
  ...place,
  stage,
  entered,
  marks: {},
  start: 'start',
  touches: 0,
  belief: OPENING_BELIEF,
  readings: {},
  ...more,
});

export const laneAt = (
  stage: string,
  entered: Readonly<Record<string, number>>,
  loaves: readonly string[],
  marks: Readonly<Record<string, number>>,
): LanePlace => ({ ...place, stage, entered, marks, vessel: 'pot', loaves });

/** Asleep each night from 22:30 to 6:30. */
const nights = Array.from({ length: 7 }, (_, day) => ({
  name: 'asleep',
  from: at(day, 22, 30),
  to: at(day + 1, 6, 30),
}));

export const KITCHEN = { fridgePlaces: 4, bowls: 2, pots: 1, temperatureC: 24 };

/** A bake for Saturday noon, asked on Thursday evening. */
export function askedDay(
  bakes: readonly { readonly name: string; readonly due: number; readonly recipe?: Recipe }[] = [
    { name: NAME, due: at(5, 12) },
  ],
  planFrom = at(3, 19),
): PlanInput {
  return {
    planFrom,
    blocked: nights,
    ratherNot: [],
    kitchen: KITCHEN,
    batches: bakes.map(({ name, due, recipe = RECIPE }) => ({
      name,
      loaves: recipe.loaves,
      steps: expandFormula(recipe, KITCHEN),
      due,
    })),
  };
}

export function fitting(input: PlanInput): Fitting {
  const result = plan(input);
  if (!result.fits) throw new Error(`No plan: ${JSON.stringify(result)}`);
  return result;
}

/** The plan as it was accepted; each bake has begun by its own name. */
export function dayPlan(asked: PlanInput, recipe: Recipe = RECIPE): DayPlan {
  const { touches, ready } = fitting(asked);
  const bakes = asked.batches.map(({ name, due }): AskedBake => ({
    name,
    recipe,
    due,
    startAt: null,
    bake: name,
    pins: {},
  }));
  return {
    id: 'plan-1',
    sequence: 0,
    ask: { bakes, kitchen: 24, belief: OPENING_BELIEF, away: [] },
    touches,
    ready,
  };
}

export const touchOf = (
  { touches }: { readonly touches: readonly PlannedTouch[] },
  name: string,
  batch = NAME,
): PlannedTouch => {
  const found = touches.find((one) => one.name === name && one.batch === batch);
  if (found === undefined) throw new Error(`No touch is called ${name}.`);
  return found;
};

/** When a plan's touches begin, and when hands are done with them. */
export const hoursIn = (plan: DayPlan) => ({
  t: (name: string): number => touchOf(plan, name).at,
  ended(name: string): number {
    const { at, hands } = touchOf(plan, name);
    return at + hands * MINUTE;
  },
});

/** A kitchen with one bake in it. */
export const kitchenWith = (
  bake: BakePlace,
  oven: OvenPlace = OVEN_OFF,
  lanes: LiveKitchen['lanes'] = {},
): LiveKitchen => ({ bakes: { [NAME]: bake }, oven, lanes });

export const live = (
  plan: DayPlan,
  asked: PlanInput,
  kitchen: LiveKitchen,
  now: number,
): ReturnType<typeof liveInput> & { readonly day: LiveDay } => {
  const loavesOf = (bake: string): string[] => [`${bake}.1`, `${bake}.2`];
  const day = { plan, asked, kitchen, loavesOf, now };
  return { ...liveInput(day), day };
};
