import { createComputed, createMemo, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import { followFocus } from './follow-focus.ts';
import { ARM_MS, usePressRoom, type Contact } from './room.ts';

/** Dead time of a key that may be pressed twice on purpose: only a bounce is kept out. */
const BOUNCE_MS = 90;
/**
 * What was pressed is seen to be, ms, however short the touch was; and no frame is spent on its rising
 * while the answer to it is made.
 */
const SEEN_MS = 120;

export interface PressOptions {
  readonly onPress: () => void;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
  readonly disabled?: () => boolean;
  /** What the press stands for: when it changes, the button counts as new and arms after 400 ms. */
  readonly fresh?: Accessor<unknown>;
  /** A keypad key: quick repeats are wanted, and it does not make the rest of the screen wait. */
  readonly quick?: boolean;
  /** False where a key must not be enough (gates). A screen reader's click still is. */
  readonly keys?: boolean;
  /** The slab: the empty ground around it is its own, and the focus comes to it at each new act. */
  readonly main?: boolean;
}

export interface Press {
  readonly ref: (el: HTMLElement) => void;
  /** True while a live contact or a key holds it down. */
  readonly pressed: Accessor<boolean>;
}

/**
 * The discipline of everything that may be pressed: acts on release inside, sliding off cancels, one
 * press however many contacts, nothing while new (400 ms) or just after another press (600 ms), keys
 * without repeat, and never twice for a touch and the click made of it. Call it inside a component.
 */
export function makePress(options: PressOptions): Press {
  const room = usePressRoom(options.now);
  const now = room.now;
  const [pressed, setPressed] = createSignal(false);
  const mine = new Set<Contact>();
  let freshAt = now();
  let takenAt = Number.NEGATIVE_INFINITY;
  let touchedAt = Number.NEGATIVE_INFINITY;
  let space = false;
  let seen: ReturnType<typeof setTimeout> | undefined;

  const show = (): void => {
    setPressed(space || seen !== undefined || [...mine].some((c) => c.live && c.inside));
  };
  const rise = (): void => {
    clearTimeout(seen);
    seen = undefined;
  };
  const stayDown = (): void => {
    clearTimeout(seen);
    seen = setTimeout(() => {
      rise();
      show();
    }, SEEN_MS);
  };
  // What it is made of may be made anew every second: it is new only where it says something else.
  const stands = createMemo(() => options.fresh?.());
  createComputed(
    on(stands, () => {
      freshAt = now();
      // What was touched stood for something else: lifting the finger now is no press of this.
      for (const contact of mine) contact.live = false;
      space = false;
      rise();
      show();
    }),
  );
  const ready = (at: number): boolean => {
    if (options.disabled?.() || at - freshAt < ARM_MS || !room.open(at)) return false;
    return !(options.quick && at - takenAt < BOUNCE_MS);
  };
  const fire = (at: number): void => {
    if (!ready(at)) return;
    takenAt = at;
    if (!options.quick) room.taken(at);
    options.onPress();
  };

  const onKeyDown = (e: KeyboardEvent): void => {
    if (e.key !== 'Enter' && e.key !== ' ') return;
    e.preventDefault();
    if (e.repeat || options.keys === false) return;
    if (e.key === 'Enter') return fire(room.when(e));
    space = ready(room.when(e));
    show();
  };
  const onKeyUp = (e: KeyboardEvent): void => {
    if (e.key !== ' ') return;
    e.preventDefault();
    const was = space;
    space = false;
    show();
    if (was) fire(room.when(e));
  };
  const onBlur = (): void => {
    space = false;
    show();
  };
  // A click without a touch is a screen reader's or a switch's. After a touch it is an echo, also
  // where the screen has moved under it and it lands on another button.
  const onClick = (e: Event): void => {
    const at = room.when(e);
    if (at - Math.max(touchedAt, room.touchedAt()) >= 1000) fire(at);
  };

  const ref = (el: HTMLElement): void => {
    const leave = room.settle(
      el,
      {
        down: (contact, at) => {
          touchedAt = at;
          if (!ready(at)) contact.live = false;
          mine.add(contact);
          show();
        },
        up: (contact, good, at) => {
          touchedAt = at;
          mine.delete(contact);
          // A key that is pressed again at once is seen to be pressed again.
          if (good && ready(at) && !options.quick) stayDown();
          if (good) fire(at);
          show();
        },
        changed: show,
      },
      options.main,
    );
    if (options.main) followFocus(el, room, stands);
    el.addEventListener('keydown', onKeyDown);
    el.addEventListener('keyup', onKeyUp);
    el.addEventListener('blur', onBlur);
    el.addEventListener('click', onClick);
    el.addEventListener('contextmenu', (e) => e.preventDefault());
    onCleanup(leave);
    onCleanup(rise);
  };
  return { ref, pressed };
}
