import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { Handed } from '../../../../machines/ports.ts';
import { dayCalendar } from '../../../core/speech/day-calendar.ts';
import type { House } from '../../house.ts';

const FILE = { name: 'loafward-day.ics', type: 'text/calendar' } as const;

/** A plan's touches on the wall, for a calendar knows no other clock. */
const onWall = (house: Pick<House, 'wall'>, plan: DayPlan): DayPlan => ({
  ...plan,
  touches: plan.touches.map((touch) => ({ ...touch, at: house.wall(touch.at) })),
});

/** Hands a plan on as a calendar file; what earlier states of it had and it has no more is cancelled. */
export function toCalendar(
  house: Pick<House, 'records' | 'now' | 'wall' | 'hour' | 'day' | 'handOn'>,
  plan: DayPlan,
): Promise<Handed> {
  const before = house
    .records()
    .flatMap(({ fact }) => (fact.kind === 'plan' ? [onWall(house, fact.plan)] : []));
  const text = dayCalendar(onWall(house, plan), before, {
    stamp: house.wall(house.now()),
    time: (at) => `${house.day(at)} ${house.hour(at)}`,
  });
  return house.handOn({ ...FILE, text });
}
