import type { DayPlan } from '../day/laid/day-plan.ts';
import { toIcs, touchKey } from '../day/plan/ics.ts';
import type { PlannedTouch } from '../day/plan/types.ts';
import type { Instant } from '../units.ts';
import { planSlack } from './words/plan.ts';
import { fill } from './fill.ts';
import { tellTouch } from './tell-plan.ts';

/** When it is written, and how an instant is shown: its day with its hour, for slack may be days. */
export interface CalendarWorld {
  readonly stamp: Instant;
  time(at: Instant): string;
}

/** Touches of earlier states of a plan that it has no more, each as it stood last. */
function goneFrom(plan: DayPlan, before: readonly DayPlan[]): PlannedTouch[] {
  const here = new Set(plan.touches.map(touchKey));
  const gone = new Map<string, PlannedTouch>();
  for (const { id, sequence, touches } of before)
    if (id === plan.id && sequence < plan.sequence)
      for (const touch of touches) if (!here.has(touchKey(touch))) gone.set(touchKey(touch), touch);
  return [...gone.values()];
}

/**
 * A plan as a calendar file. Each event's SEQUENCE is the plan's own, so that a file of a later state
 * is the newer one wherever it is read; what earlier states (`before`, oldest first) had and it has no
 * more is cancelled.
 */
export function dayCalendar(
  plan: DayPlan,
  before: readonly DayPlan[],
  { stamp, time }: CalendarWorld,
): string {
  const removed = goneFrom(plan, before);
  const keys = [...plan.touches, ...removed].map(touchKey);
  return toIcs(plan.touches, {
    stamp,
    plan: plan.id,
    sequence: Object.fromEntries(
      keys.map((key, i) => [key, plan.sequence - (i < plan.touches.length ? 0 : 1)]),
    ),
    name: (touch) => tellTouch(touch.name),
    describe: ({ fineUntil, lastPossible }) =>
      [
        fill(planSlack.fine, { time: time(fineUntil) }),
        fill(planSlack.last, { time: time(lastPossible) }),
      ].join('\n'),
    removed,
  });
}
