import type { CallKind, Clock, Sound, Stop } from '../../machines/ports.ts';
import type { Instant } from '../../src/core/units.ts';

/** One call as it was asked to sound. */
export interface TimedRing {
  readonly kind: CallKind;
  /** The clock's instant from which it sounds. */
  readonly since: Instant;
  /** The steady clock as it was first heard; null: it was not. */
  begun: number | null;
  /** How late it was then, ms. */
  late: number;
  /** The steady clock as it was silenced; null: it was not. */
  stopped: number | null;
}

export interface TimedSound extends Sound {
  readonly rings: readonly TimedRing[];
  /** Those that are heard at this instant. More than one is a fault of the caller. */
  heard(): readonly TimedRing[];
}

/**
 * Sound that is not heard, but sounds when it would be: from its instant on the device's clock, or as soon
 * as the device is awake behind it. As in the real one it falls silent where that clock is set back before
 * its instant.
 */
export function makeTimedSound(
  clock: Pick<Clock, 'now' | 'steady' | 'wake' | 'rate'>,
  onBegin: (ring: TimedRing) => void = () => undefined,
): TimedSound {
  const rings: TimedRing[] = [];
  return {
    rings,
    heard: () =>
      rings.filter(
        ({ begun, stopped, since }) => begun !== null && stopped === null && since <= clock.now(),
      ),
    state: () => 'armed',
    onState: () => () => undefined,
    arm: () => Promise.resolve('armed'),
    ring(kind, inMs): Stop {
      const since = clock.now() + inMs * clock.rate;
      const ring: TimedRing = { kind, since, begun: null, late: 0, stopped: null };
      rings.push(ring);
      const begin = (): void => {
        if (ring.stopped !== null) return;
        ring.begun = clock.steady();
        ring.late = clock.now() - since;
        onBegin(ring);
      };
      const unwake = since <= clock.now() ? (begin(), () => undefined) : clock.wake(since, begin);
      return () => {
        unwake();
        ring.stopped ??= clock.steady();
      };
    },
  };
}
