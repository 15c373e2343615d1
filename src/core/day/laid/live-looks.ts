import { chanceReady, lookTimes, type Look } from '../plan/look-times.ts';
import type { PlannedTouch } from '../plan/types.ts';
import { MINUTE, type Instant } from '../../units.ts';
import type { AtTouch } from './at-touch.ts';
import { windowOf } from './elsewhere.ts';
import type { LiveDay, LiveInput } from './live-input.ts';

/** Looks at one bake's levain, dough or loaf; `touch`: the one before the wait. */
export interface BakeLooks {
  readonly batch: string;
  readonly touch: string;
  readonly looks: readonly Look[];
}

/** Waits that a look ends. A cold loaf's is looked at as the oven goes on. */
const LOOKED_AT = ['feed levain', 'salt and water', 'shape', 'spoon'];

/** When somebody could look: nobody is away, and no hands are at another touch. */
const freeIn =
  ({ asked, now }: LiveDay, touches: readonly PlannedTouch[]) =>
  (at: Instant): boolean =>
    at >= now &&
    !asked.blocked.some(({ from, to }) => from <= at && at < to) &&
    !touches.some(({ at: from, hands }) => from <= at && at < from + hands * MINUTE);

/** The bench calls for the first look: it stands where it is, unless nobody is there. */
function looksOf(
  { marks }: AtTouch,
  free: (at: Instant) => boolean,
  now: Instant,
): readonly Look[] {
  const window = windowOf(marks);
  if (window === null) return [];
  const { earliest: p10, likely: p50, latest: p90 } = window;
  const times = { p10, p50, p90 };
  const called = marks['look'];
  if (called === undefined || !free(called)) return lookTimes(times, { now, free });
  const first: Look = { at: called, chanceReady: chanceReady(times, called) };
  return [first, ...lookTimes(times, { now: called, free })];
}

/**
 * When to go and look at each bake that waits, so that looks and overshoot together cost least, from
 * what the bench believes now; a new reading reckons them anew. `touches`: the plan's, whose hands are
 * elsewhere.
 */
export function liveLooks(
  day: LiveDay,
  { at }: LiveInput,
  touches: readonly PlannedTouch[],
): BakeLooks[] {
  const ahead = touches.filter((touch) => touch.at + touch.hands * MINUTE > day.now);
  return Object.entries(at).flatMap(([batch, place]) => {
    if (place.is !== 'wait' || !LOOKED_AT.includes(place.touch)) return [];
    // The touch that this look leads to is no reason not to look.
    const others = ahead.filter((touch) => touch.batch !== batch);
    const looks = looksOf(place, freeIn(day, others), day.now);
    return looks.length > 0 ? [{ batch, touch: place.touch, looks }] : [];
  });
}
