import type { ScreenAwake } from '../../machines/ports.ts';

type State = ReturnType<ScreenAwake['state']>;

export interface TurnedScreen extends ScreenAwake {
  /** The browser gives, takes away or never had the lock. */
  become(state: State): void;
  /** How many hold the screen now. */
  holders(): number;
}

/** A screen that is held as soon as someone holds, and lost when the test says so. */
export function makeTurnedScreen(first: State = 'lost'): TurnedScreen {
  const listeners = new Set<(state: State) => void>();
  const holders = new Set<symbol>();
  let state = first;
  const become = (next: State) => {
    if (next === state) return;
    state = next;
    for (const then of listeners) then(next);
  };
  return {
    state: () => state,
    onState(then) {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    hold() {
      const holder = Symbol();
      holders.add(holder);
      if (state !== 'unavailable') become('held');
      return () => {
        if (holders.delete(holder) && holders.size === 0 && state === 'held') become('lost');
      };
    },
    become,
    holders: () => holders.size,
  };
}
