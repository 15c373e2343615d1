import { untrack } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { instantOf } from '../../../core/day/plan/wall-clock.ts';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import type { Instant } from '../../../core/units.ts';
import type { House } from '../../house.ts';

/** Kitchen time at a minute of a day on this tablet's wall; the earlier one where the wall shows it twice. */
export function instantAt(
  house: Pick<House, 'now' | 'wall' | 'zone'>,
  day: DayKey,
  minute: MinuteOfDay,
): Instant {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const wall = { year, month, day: date, hour: Math.floor(minute / 60), minute: minute % 60 };
  const now = untrack(house.now);
  return instantOf(wall, house.zone(), 'earlier') + now - house.wall(now);
}
