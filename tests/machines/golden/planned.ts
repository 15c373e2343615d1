import type { DayPlan } from '../../../src/core/day/laid/day-plan.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { HOUR } from '../../../src/core/units.ts';
import { laidDay, SATURDAY_NOON, THURSDAY } from '../../fakes/laid-day.ts';
import { Hand } from '../support/hand.ts';
import { walkTo, walkToEnd } from '../support/onward.ts';
import { RECIPE } from '../support/recipe.ts';

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden planned day is refused.');
};

/** The plan that stands, its oven on at another instant. */
const replanned = (plan: DayPlan, by: number): DayPlan => ({
  ...plan,
  sequence: plan.sequence + 1,
  touches: plan.touches.map((touch) =>
    touch.name === 'oven on' ? { ...touch, at: touch.at + by } : touch,
  ),
});

/**
 * A Saturday's bread planned on Thursday by the real models: a plan taken back and accepted again, its
 * bake begun and once taken back, a jump, a re-plan while the loaves are in the fridge, the look at the
 * planned minute, and the plan given up once the bread is out.
 */
export const goldenPlanned = (): readonly LogRecord[] => {
  const hand = new Hand({ now: THURSDAY, wait: waitFor });
  const plan = laidDay();
  must(hand.do({ kind: 'plan', plan }));
  must(hand.takeBack());
  must(hand.do({ kind: 'plan', plan }));
  const { name } = plan.ask.bakes[0]!;
  hand.turnTo(plan.touches[0]!.at);
  const start = {
    kind: 'start',
    bake: 'cherry',
    loaves: ['cherry.1', 'cherry.2'],
    from: 'levain.feed',
    recipe: RECIPE,
    kitchen: 22,
    planned: { plan: plan.id, name },
  } as const;
  must(hand.do(start));
  must(hand.takeBack());
  must(hand.do(start));
  walkTo(hand, 'cherry', 'bulk.fold', 'cherry');
  must(hand.do({ kind: 'jump', position: hand.fold.positionOf(hand.kitchen) }));
  walkTo(hand, 'cherry', 'proof.retard', 'cherry');
  hand.turn(60);
  must(hand.do({ kind: 'plan', plan: replanned(hand.kitchen.plan!, -HOUR) }));
  must(hand.do({ kind: 'plan', plan: replanned(hand.kitchen.plan!, HOUR / 2) }));
  must(hand.takeBack());
  hand.turnTo(hand.deadline('cherry')!);
  walkToEnd(hand, 'cherry');
  must(hand.now < SATURDAY_NOON + 6 * HOUR);
  must(hand.do({ kind: 'planOff', plan: plan.id }));
  return hand.records;
};
