import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Instant } from '../../../src/core/units.ts';
import type { House } from '../../../src/screens/house.ts';

const formats = new Map<string, Intl.DateTimeFormat>();
/** 'Sat 15:05', made apart from the program: in a zone that is named. */
export function shownIn(zone: string, wall: Instant): string {
  const known = formats.get(zone);
  const format =
    known ??
    new Intl.DateTimeFormat('en-GB', {
      ...{ timeZone: zone, weekday: 'short', hour: '2-digit', minute: '2-digit' },
      hourCycle: 'h23',
    });
  if (!known) formats.set(zone, format);
  return format.format(wall).replace(',', '');
}

/** When everything that waits in this kitchen ends, kitchen time. */
export const endsOf = (house: House): readonly Instant[] => {
  const { bakes, lanes, oven, timers } = house.kitchen();
  const ends = [oven, ...Object.values(lanes), ...Object.values(bakes)].map(deadlineOf);
  return [...ends, ...Object.values(timers).map(({ until }) => until)].filter((at) => at !== null);
};
