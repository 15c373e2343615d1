import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import type { Quiet } from '../../machines/kitchen/ringing.ts';
import type { CallKind, Clock, Sound, Stop } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';
import { DRIFT } from './kitchen-time.ts';
import type { LaterCourse } from './later-course.ts';

export interface RunnerParts {
  readonly clock: Clock;
  readonly sound: Sound;
  readonly machines: Machines;
  readonly course: Pick<LaterCourse, 'here'>;
  /** The clock's instant of a kitchen instant. */
  readonly wallOf: (at: Instant) => Instant;
  readonly tick: () => void;
  readonly quiet: Quiet;
}

export interface Runner {
  /** Brings about what this kitchen wants: one alarm armed, one call laid on the audio clock. */
  follow(kitchen: Kitchen): void;
  /** Silences what sounds at once, before the hush is written. */
  quiet(): void;
  stop: Stop;
}

/** After its reminder only a hot call sounds on, ms: core/speech/burst.ts, which comes with the sound. */
export const SAID_MS = 300_000;
const hasSaid = (kind: CallKind, inMs: number): boolean => kind !== 'hot' && inMs < -SAID_MS;

/** Alarms are levels: what is wanted is held against what stands, and only the difference is done. */
export function makeRunner(parts: RunnerParts): Runner {
  const { clock, sound, machines, course, wallOf, tick, quiet } = parts;
  let alarm: { readonly at: Instant; readonly stop: Stop } | null = null;
  /** `from` is a kitchen instant, `at` the clock's. */
  let ring: {
    readonly id: string;
    readonly from: Instant;
    readonly at: Instant;
    readonly stop: Stop;
  } | null = null;

  const arm = (at: Instant | null): void => {
    if (alarm?.at === at) return;
    alarm?.stop();
    alarm = at === null ? null : { at, stop: clock.wake(at, tick) };
  };
  return {
    follow(kitchen) {
      const time = course.here();
      if (time === null) return;
      const { alarmAt } = time.wanted(kitchen);
      arm(alarmAt === null ? null : wallOf(alarmAt));
      const next = time.nextCall(kitchen, machines, quiet);
      if (next === null) {
        ring?.stop();
        ring = null;
        return;
      }
      const { id, kind } = next.call;
      const isOn =
        ring?.id === id && ring.from <= kitchen.now && next.at <= kitchen.now ? ring : null;
      const from = isOn?.from ?? next.at;
      const at = wallOf(from);
      const inMs = (at - clock.now()) / clock.rate;
      // One that has begun is not begun again: but where the clock went back it would be silent till then.
      const goesOn = isOn !== null && (Math.abs(isOn.at - at) <= DRIFT || hasSaid(kind, inMs));
      if (goesOn || (ring?.id === id && ring.at === at)) return;
      ring?.stop();
      ring = { id, from, at, stop: sound.ring(kind, inMs) };
    },
    quiet: () => ring?.stop(),
    stop() {
      arm(null);
      ring?.stop();
      ring = null;
    },
  };
}
