import type { CallKind, Sound, SoundState, Stop } from '../../machines/ports.ts';
import type { Instant } from '../../src/core/units.ts';

export interface SilentSound extends Sound {
  /** Every ring asked for, in order; `stopped` once it was silenced. */
  readonly rung: readonly { readonly kind: CallKind; readonly at: Instant; stopped: boolean }[];
  /** Rings not yet silenced. More than one is a fault of the caller. */
  ringing(): readonly { readonly kind: CallKind; readonly at: Instant }[];
  /** The browser locks, unlocks or loses the sound. */
  become(state: SoundState): void;
}

/** Sound that is not heard but remembered. `arm` arms unless it is unavailable. */
export function makeSilentSound(first: SoundState = 'locked'): SilentSound {
  const rung: { kind: CallKind; at: Instant; stopped: boolean }[] = [];
  const listeners = new Set<(state: SoundState) => void>();
  let state = first;
  const become = (next: SoundState) => {
    if (next === state) return;
    state = next;
    for (const then of listeners) then(next);
  };
  return {
    rung,
    ringing: () => rung.filter((ring) => !ring.stopped),
    become,
    state: () => state,
    onState(then): Stop {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    arm: async () => {
      if (state === 'locked') become('armed');
      return state;
    },
    ring(kind, at) {
      const ring = { kind, at, stopped: false };
      rung.push(ring);
      return () => void (ring.stopped = true);
    },
  };
}
