import type { Clock } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';

/** Kitchen time and the wall instant it was read from. */
export interface Moment {
  readonly at: Instant;
  readonly raw: Instant;
}

/**
 * Kitchen time = wall + offset. It never runs back: where the wall would put it before `floor`
 * (the fold's own now, dues included), the offset grows and stays grown.
 */
export interface KitchenTime {
  /** Reads the clock; grows the offset if the wall fell behind `floor`. */
  read(floor: Instant): Moment;
  /** The wall instant at which kitchen time reaches `at`: what an hour on the screen is made of. */
  wallOf(at: Instant): Instant;
  /** Whether the wall was ever found behind: then elapsed time is unknown and the hour is asked. */
  fellBack(): boolean;
}

/** @param last the last fact of the log, whose `at − raw` the offset starts from */
export function makeKitchenTime(clock: Clock, last: Moment | null): KitchenTime {
  let offset = last ? last.at - last.raw : 0;
  let back = last !== null && clock.now() < last.raw;
  return {
    read(floor) {
      const raw = clock.now();
      if (raw + offset < floor) {
        back = true;
        offset = floor - raw;
      }
      return { at: raw + offset, raw };
    },
    wallOf: (at) => at - offset,
    fellBack: () => back,
  };
}
