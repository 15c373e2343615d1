import { localeOf } from './measures.ts';

/**
 * A month of the calendar as it is shown, the same in every zone.
 *
 * @param month "2031-05"
 * @example showMonth('2031-05') // 'May 2031'
 */
export const showMonth = (month: string): string =>
  new Date(`${month}-15T12:00:00Z`).toLocaleDateString(localeOf(), {
    ...{ month: 'short', year: 'numeric' },
    timeZone: 'UTC',
  });
