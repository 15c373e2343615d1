import type { CallKind, Sound, SoundState, Stop } from '../../machines/ports.ts';

export interface SilentSound extends Sound {
  /** Every ring asked for, in order; `stopped` once it was silenced. */
  readonly rung: readonly { readonly kind: CallKind; readonly inMs: number; stopped: boolean }[];
  /** Rings not yet silenced. More than one is a fault of the caller. */
  ringing(): readonly { readonly kind: CallKind; readonly inMs: number }[];
  /** The browser locks, unlocks or loses the sound. */
  become(state: SoundState): void;
}

/** Sound that is not heard but remembered. `arm` arms unless it is unavailable. */
export function makeSilentSound(first: SoundState = 'locked'): SilentSound {
  const rung: { kind: CallKind; inMs: number; stopped: boolean }[] = [];
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
      if (state !== 'unavailable') become('armed');
      return state;
    },
    ring(kind, inMs) {
      const ring = { kind, inMs, stopped: false };
      rung.push(ring);
      return () => void (ring.stopped = true);
    },
  };
}
