import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import type { Quiet } from '../../machines/kitchen/ringing.ts';
import type { Clock, Sound, Stop } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';
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
      const at = next && wallOf(next.at);
      // A call laid ahead moves with the tablet's clock; one that has begun is not begun again.
      const isOn =
        ring !== null && ring.from <= kitchen.now && next !== null && next.at <= kitchen.now;
      if (ring?.id === next?.call.id && (isOn || ring?.at === (at ?? undefined))) return;
      ring?.stop();
      ring = next && {
        id: next.call.id,
        from: next.at,
        at: wallOf(next.at),
        stop: sound.ring(next.call.kind, (wallOf(next.at) - clock.now()) / clock.rate),
      };
    },
    quiet: () => ring?.stop(),
    stop() {
      arm(null);
      ring?.stop();
      ring = null;
    },
  };
}
