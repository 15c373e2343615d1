import { chosenFeed } from '../../src/core/day/laid/chosen-feed.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { laidDay, THURSDAY } from './laid-day.ts';

export const BREAD = 'Cherry and hazelnut';

/** A plan for Saturday noon that was accepted on Thursday, and a baker who follows it. */
export interface RunningDay {
  readonly hand: Hand;
  readonly plan: DayPlan;
  /** When a touch was planned. */
  at(name: string): number;
}

/** The bake `a` of it stands at a stage; it began when its feed was planned, so many minutes late. */
export function runningDay(stage: string, late = 0): RunningDay {
  const plan = laidDay();
  const hand = new Hand({ now: THURSDAY, wait: waitFor });
  hand.do({ kind: 'plan', plan });
  const at = (name: string): number => plan.touches.find((touch) => touch.name === name)!.at;
  hand.turnTo(at('feed levain') + late * MINUTE);
  const feed = plan.touches.find((touch) => touch.name === 'feed levain');
  const recipe = chosenFeed(plan.ask.bakes[0]!.recipe, feed?.choice);
  hand.do({
    kind: 'start',
    bake: 'a',
    loaves: ['a1', 'a2'],
    from: 'read.list',
    recipe,
    kitchen: plan.ask.kitchen,
    planned: { plan: plan.id, name: BREAD },
  });
  walkTo(hand, 'a', stage);
  return { hand, plan, at };
}
