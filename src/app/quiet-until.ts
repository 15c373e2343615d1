import type { Quiet } from '../../machines/kitchen/ringing.ts';
import type { QuietHours } from '../core/kitchen/equipment.ts';
import { canWait, minutesLeft } from '../core/kitchen/quiet-hours.ts';
import type { Instant } from '../core/units.ts';

/** These hours on the tablet's own clock; they end at their hour in a night that is an hour short, too. */
export const quietUntil =
  (hours: QuietHours, wallOf: (at: Instant) => Instant): Quiet =>
  (call, at) => {
    if (!canWait(call.stage)) return null;
    const wall = new Date(wallOf(at));
    const minute = wall.getHours() * 60 + wall.getMinutes();
    const left = minutesLeft(minute, hours);
    if (left === null) return null;
    const end = new Date(wall).setHours(0, minute + left, 0, 0);
    return at + (end - wall.getTime());
  };
