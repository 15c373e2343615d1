import { wanted } from '../../machines/kitchen/dues.ts';
import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import { nextCall } from '../../machines/kitchen/next-call.ts';
import type { Clock, Sound, Stop } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';

export interface RunnerParts {
  readonly clock: Clock;
  readonly sound: Sound;
  readonly machines: Machines;
  /** The clock's instant of a kitchen instant. */
  readonly wallOf: (at: Instant) => Instant;
  readonly tick: () => void;
}

export interface Runner {
  /** Brings about what this kitchen wants: one alarm armed, one call laid on the audio clock. */
  follow(kitchen: Kitchen): void;
  /** Silences what sounds at once, before the hush is written. */
  quiet(): void;
  stop: Stop;
}

/** Alarms are levels: what is wanted is held against what stands, and only the difference is done. */
export function makeRunner({ clock, sound, machines, wallOf, tick }: RunnerParts): Runner {
  let alarm: { readonly at: Instant; readonly stop: Stop } | null = null;
  let ring: { readonly id: string; readonly at: Instant; readonly stop: Stop } | null = null;

  const arm = (at: Instant | null): void => {
    if (alarm?.at === at) return;
    alarm?.stop();
    alarm = at === null ? null : { at, stop: clock.wake(at, tick) };
  };
  return {
    follow(kitchen) {
      const { alarmAt, ringing } = wanted(kitchen);
      arm(alarmAt === null ? null : wallOf(alarmAt));
      const call = nextCall(kitchen, machines);
      const at = call && wallOf(call.since);
      // A call laid ahead moves with the tablet's clock; one that has begun is not begun again.
      if (ring?.id === call?.id && (ringing !== null || ring?.at === (at ?? undefined))) return;
      ring?.stop();
      ring = call && {
        id: call.id,
        at: wallOf(call.since),
        stop: sound.ring(call.kind, (wallOf(call.since) - clock.now()) / clock.rate),
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
