import type { RiseCourse } from '../../../core/day/rise-course.ts';
import { rise } from '../../../core/speech/words/rise.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { sayNumber } from '../../../core/speech/numbers.ts';
import { HOUR, MINUTE, type Instant } from '../../../core/units.ts';

/** From here on an hour alone would not say which day it is of. */
const LONG = 12 * HOUR;

/** The chart in two sentences: where it likely is, and when it is ready. `marks`: its wait's window. */
export function sayRise(
  { of, now }: Pick<RiseCourse, 'of' | 'now'>,
  percent: number,
  { earliest, likely, latest }: Readonly<Record<string, Instant>>,
  hour: (at: Instant) => string,
): string {
  const { spoken } = rise;
  const values = { percent: sayNumber(percent, 'percent') };
  if (percent >= 100 || earliest === undefined || latest === undefined || earliest <= now)
    return fill(spoken[`${of}There`], values);
  if (latest - now < LONG)
    return fill(spoken[of], { ...values, ...said({ time: hour(earliest), until: hour(latest) }) });
  const minutes = Math.max(1, Math.round(((likely ?? latest) - now) / HOUR)) * (HOUR / MINUTE);
  return fill(spoken[`${of}Long`], { ...values, ...said({ minutes }) });
}
