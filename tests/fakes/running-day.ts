import { chosenFeed } from '../../src/core/day/laid/chosen-feed.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { askWorld, dayAsk, laidDay, THURSDAY } from './laid-day.ts';
import type { LogRecord } from '../../src/core/records/record.ts';

export const BREAD = 'Cherry and hazelnut';

/** A plan for Saturday noon that was accepted on Thursday, and a baker who follows it. */
export interface RunningDay {
  readonly hand: Hand;
  readonly plan: DayPlan;
  /** When a touch was planned. */
  at(name: string): number;
}

/** The bake `a` of it stands at a stage; it began when its feed was planned, so many minutes late. */
export function runningDay(stage: string, late = 0, zone = 'Europe/Berlin'): RunningDay {
  const plan = laidDay(dayAsk(), askWorld({ zone }));
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

/** A baker who goes on where a log ends. */
export function goingOn(records: readonly LogRecord[], now: number): Hand {
  const hand = new Hand({ now, wait: waitFor });
  const { kitchen, trouble } = hand.fold.replay(records, hand.machines);
  if (trouble) throw new Error(`The log differs at ${trouble.seq}.`);
  hand.kitchen = kitchen;
  hand.records = [...records];
  return hand.turnTo(now);
}
