import type { Clock } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';

/**
 * A clock for a rehearsal: it reads `from` now and runs `rate` times as fast as `wall`.
 *
 * Errors: throws when `rate` is not a number above 0.
 *
 * @example
 * const clock = makeRehearsalClock(wall, 60, wall.now()); // an hour passes in a minute
 */
export function makeRehearsalClock(wall: Clock, rate: number, from: Instant): Clock {
  if (!(rate > 0 && Number.isFinite(rate))) {
    throw new Error(`makeRehearsalClock: rate ${rate} is not a number above 0.`);
  }
  const begun = wall.now();
  const now = () => from + (wall.now() - begun) * rate;
  return {
    rate,
    now,
    steady: () => wall.steady() * rate,
    // Rounded up to a whole wall millisecond, so that this clock has reached `at` when it calls.
    wake: (at, then) => wall.wake(Math.ceil(begun + (at - from) / rate), then),
  };
}
