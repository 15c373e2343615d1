import { localeOf } from './measures.ts';
import type { DayKey } from '../circle/day-key.ts';

/**
 * A day of the calendar as it is shown, the same in every zone.
 *
 * @example showDay('2031-05-03') // 'Sat 3 May'
 */
export function showDay(day: DayKey): string {
  const noon = new Date(`${day}T12:00:00Z`);
  const part = (of: Intl.DateTimeFormatOptions): string =>
    noon.toLocaleDateString(localeOf(), { ...of, timeZone: 'UTC' });
  return `${part({ weekday: 'short' })} ${part({ day: 'numeric', month: 'short' })}`;
}
