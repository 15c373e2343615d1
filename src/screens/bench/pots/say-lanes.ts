import type { LoadPlan } from '../../../core/oven/lanes.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { HOUR, MINUTE, type Instant } from '../../../core/units.ts';

/** From here on an hour alone would not say which day it is of. */
const LONG = 12 * HOUR;

/** The chart in two sentences: when the last loaf is out, and when it may be bagged. */
export function sayLanes(
  { lastOut, lastBag }: Pick<LoadPlan, 'lastOut' | 'lastBag'>,
  now: Instant,
  hour: (at: Instant) => string,
): string {
  if (lastOut === null || lastBag === null) return potsPage.none;
  if (lastBag - now < LONG)
    return fill(potsPage.spoken, said({ time: hour(lastOut), until: hour(lastBag) }));
  const minutes = Math.max(1, Math.round((lastOut - now) / HOUR)) * (HOUR / MINUTE);
  return fill(potsPage.spokenLong, said({ minutes }));
}

/** The same to be read, with its days where it reaches into another. */
export function lastWords(
  { lastOut, lastBag }: Pick<LoadPlan, 'lastOut' | 'lastBag'>,
  now: Instant,
  hour: (at: Instant) => string,
  day: (at: Instant) => string,
): string {
  if (lastOut === null || lastBag === null) return potsPage.none;
  const show = (at: Instant): string =>
    lastBag - now < LONG ? hour(at) : `${day(at)} ${hour(at)}`;
  return fill(potsPage.last, { time: show(lastOut), until: show(lastBag) });
}
