import { askInput } from '../../src/core/day/laid/ask-input.ts';
import type { AskWorld } from '../../src/core/day/laid/ask-world.ts';
import type { AskedBake, DayAsk, DayPlan } from '../../src/core/day/laid/day-plan.ts';
import { plan } from '../../src/core/day/plan.ts';
import type { PlanInput, PlanResult } from '../../src/core/day/plan/types.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import { RECIPE } from '../machines/support/recipe.ts';

/** Thursday, 1 May 2031, 19:03 in Berlin; bread is wanted on Saturday at noon. */
export const THURSDAY = Date.UTC(2031, 4, 1, 17, 3);
export const SATURDAY_NOON = Date.UTC(2031, 4, 3, 10);

export const askedBake = (change: Partial<AskedBake> = {}): AskedBake => ({
  name: 'Cherry and hazelnut',
  recipe: RECIPE,
  due: SATURDAY_NOON,
  startAt: null,
  bake: null,
  pins: {},
  ...change,
});

export const dayAsk = (change: Partial<DayAsk> = {}): DayAsk => ({
  bakes: [askedBake()],
  kitchen: 22,
  belief: OPENING_BELIEF,
  away: [],
  ...change,
});

export const askWorld = (change: Partial<AskWorld> = {}): AskWorld => ({
  now: THURSDAY,
  zone: 'Europe/Berlin',
  week: EQUIPMENT.week,
  equipment: EQUIPMENT,
  ...change,
});

/** The planner's question. @throws where there is a trouble instead */
export function inputOf(ask: DayAsk, world: AskWorld): PlanInput {
  const { input, troubles } = askInput(ask, world);
  if (input === null) throw new Error(JSON.stringify(troubles));
  return input;
}

type Fitting = Extract<PlanResult, { fits: true }>;

/** The plan of an ask. @throws where nothing fits */
export function fitting(ask: DayAsk, world: AskWorld): Fitting {
  const result = plan(inputOf(ask, world));
  if (result.fits !== true) throw new Error(`Nothing fits: ${JSON.stringify(result)}`);
  return result;
}

/** A day as it would be accepted. */
export function laidDay(
  ask: DayAsk = dayAsk(),
  world: AskWorld = askWorld(),
  id = 'day-1',
): DayPlan {
  const { touches, ready } = fitting(ask, world);
  return { id, sequence: 1, ask, touches, ready };
}
