import type { Clock } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';

/** Kitchen time and the wall instant it was read from. */
export interface Moment {
  readonly at: Instant;
  readonly raw: Instant;
}

/** What the wall did between two readings that the steady clock did not. */
export interface Leap {
  /** Milliseconds; below 0: back. */
  readonly by: number;
  /** Kitchen time when all was still well. */
  readonly from: Instant;
}

/**
 * Kitchen time = wall + offset. It never runs back: where the wall would put it before `floor`
 * (the fold's own now, dues included), the offset grows and stays grown. Where the wall goes back
 * while the page runs the offset takes it up, and kitchen time runs on by the steady clock.
 */
export interface KitchenTime {
  /** Reads the clock; grows the offset if the wall fell behind `floor`. */
  read(floor: Instant): Moment;
  /** The wall instant at which kitchen time reaches `at`: what an hour on the screen is made of. */
  wallOf(at: Instant): Instant;
  /** Whether the wall was found behind and nobody knows by how much: the hour is asked. */
  fellBack(): boolean;
  /** The last leap while the page ran, back or ahead; null: none yet. Ahead it may be a sleep. */
  leapt(): Leap | null;
}

/** A clock that the network sets right moves by less, and the two clocks drift. Judgement. */
export const DRIFT = 5_000;
/** Shorter sleeps and leaps ahead move no wait by much. Judgement. */
const AHEAD = 15 * 60_000;

/** @param last the last fact of the log, whose `at − raw` the offset starts from */
export function makeKitchenTime(clock: Clock, last: Moment | null): KitchenTime {
  let offset = last ? last.at - last.raw : 0;
  let back = last !== null && clock.now() < last.raw - DRIFT;
  let before = { raw: clock.now(), steady: clock.steady() };
  let leap: Leap | null = null;
  return {
    read(floor) {
      const here = { raw: clock.now(), steady: clock.steady() };
      const by = here.raw - before.raw - (here.steady - before.steady);
      if (by < -DRIFT || by > AHEAD) leap = { by, from: before.raw + offset };
      if (by < -DRIFT) offset -= by;
      before = here;
      const behind = floor - (here.raw + offset);
      if (behind > DRIFT) back = true;
      if (behind > 0) offset += behind;
      return { at: here.raw + offset, raw: here.raw };
    },
    wallOf: (at) => at - offset,
    fellBack: () => back,
    leapt: () => leap,
  };
}
