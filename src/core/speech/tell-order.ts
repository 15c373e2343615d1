import type { DayKey } from '../circle/day-key.ts';
import type { Notice } from '../formula/notice.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import type { Units } from '../units.ts';
import { orderAsked, orderRefused } from './words/orders.ts';
import { fill } from './fill.ts';
import { showWeight } from './weights.ts';

const templates: readonly Readonly<Record<string, string>>[] = [orderRefused, orderAsked];

/** Those whose numbers are weights; the others' are counts. */
const WEIGHTS = 'orderWeight';

/** How this tablet shows a day and a minute of one. */
export interface DayShows {
  date(day: DayKey): string;
  hour(minute: MinuteOfDay): string;
}

/**
 * The sentence of why an order is refused or asked again.
 *
 * @throws Error `No sentence for the notice x.`
 * @example tellOrder({ key: 'orderCount', values: { least: 1, most: 99 } }, units, shows)
 * // 'So many cannot be taken. Take 1 to 99 of a bread.'
 */
export function tellOrder({ key, values }: Notice, units: Units, shows: DayShows): string {
  const template = templates.find((words) => Object.hasOwn(words, key))?.[key];
  if (template === undefined) throw new Error(`No sentence for the notice ${key}.`);
  const { day, minute, ...rest } = values;
  const shown = Object.entries(rest).map(([name, value]) => [
    name,
    typeof value === 'number' && key === WEIGHTS ? showWeight(value, units) : value,
  ]);
  return fill(template, {
    ...(Object.fromEntries(shown) as Notice['values']),
    ...(typeof day === 'string' ? { date: shows.date(day) } : {}),
    ...(typeof minute === 'number' ? { time: shows.hour(minute) } : {}),
  });
}
