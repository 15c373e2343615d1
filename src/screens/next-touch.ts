import type { DayPlan } from '../core/day/laid/day-plan.ts';
import type { PlannedTouch } from '../core/day/plan/types.ts';
import { dayPlan } from '../core/speech/words/day.ts';
import { fill } from '../core/speech/fill.ts';
import { touchWithin } from '../core/speech/tell-plan.ts';
import type { Instant } from '../core/units.ts';
import type { House } from './house.ts';

/**
 * What a plan wants hands for next: of a bake that has not begun its first touch, however late, of one
 * that runs what is still to come. Null: no more.
 */
export function nextTouch({ touches, ask }: DayPlan, now: Instant): PlannedTouch | null {
  const waits = new Set(ask.bakes.flatMap(({ bake, name }) => (bake === null ? [name] : [])));
  const begun = new Set<string>();
  return (
    touches.find(({ batch, at }) => {
      const isFirst = waits.has(batch) && !begun.has(batch);
      begun.add(batch);
      return isFirst || at >= now;
    }) ?? null
  );
}

/** 'Sat 06:30, oven on' */
export function nextWords(
  house: Pick<House, 'hour' | 'day' | 'midnight' | 'now'>,
  { name, at }: PlannedTouch,
): string {
  const hour = house.hour(at);
  const time =
    house.midnight(at) === house.midnight(house.now()) ? hour : `${house.day(at)} ${hour}`;
  return fill(dayPlan.next, { name: touchWithin(name), time });
}
