import { createSignal, onCleanup, type Accessor } from 'solid-js';
import { followFocus } from './follow-focus.ts';
import { ARM_MS, usePressRoom, type Contact } from './room.ts';

/** What can't be undone, and what may hurt, is held this long. */
export const HOLD_MS = 1200;

export interface Hold {
  readonly ref: (el: HTMLElement) => void;
  readonly holding: Accessor<boolean>;
}

/**
 * A hold by finger, knuckle or a focused Space bar: `onHeld` after 1.2 s without leaving. It arms
 * 400 ms after it appears; letting go, sliding off or a third touch elsewhere ends it.
 */
export function makeHold(onHeld: () => void): Hold {
  const room = usePressRoom();
  const [holding, setHolding] = createSignal(false);
  const freshAt = room.now();
  let timer: ReturnType<typeof setTimeout> | null = null;
  let mine: Contact | null = null;

  const stop = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    mine = null;
    setHolding(false);
  };
  const begin = (at: number): boolean => {
    if (at - freshAt < ARM_MS || !room.open(at)) return false;
    if (timer === null) {
      setHolding(true);
      timer = setTimeout(() => {
        stop();
        room.taken(room.now());
        onHeld();
      }, HOLD_MS);
    }
    return true;
  };
  const ref = (el: HTMLElement): void => {
    const leave = room.settle(
      el,
      {
        down: (contact, at) => {
          // A dead contact (the third of a wet screen, another mouse button) begins nothing.
          if (contact.live && begin(at)) mine = contact;
          else contact.live = false;
        },
        up: (contact) => {
          if (contact === mine) stop();
        },
        changed: () => {
          if (mine && !(mine.live && mine.inside)) stop();
        },
      },
      true,
    );
    followFocus(el, room);
    el.addEventListener('keydown', (e) => {
      if (e.key !== ' ') return;
      e.preventDefault();
      if (!e.repeat) begin(room.when(e));
    });
    el.addEventListener('keyup', (e) => {
      if (e.key === ' ') stop();
    });
    el.addEventListener('blur', stop);
    el.addEventListener('contextmenu', (e) => e.preventDefault());
    onCleanup(() => {
      leave();
      stop();
    });
  };
  return { ref, holding };
}
