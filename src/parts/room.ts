import { createContext, useContext } from 'solid-js';

/** One finger, knuckle or drop of water on the glass. Not live: nothing may come of it any more. */
export interface Contact {
  readonly home: Element | null;
  live: boolean;
  inside: boolean;
}

/** What may be pressed or held, as the room sees it. */
export interface Home {
  /** A contact began here, by its own time `at`; it may set `live` to false. */
  down(contact: Contact, at: number): void;
  /** A contact that began here has ended; `good` when it is live and was lifted inside. */
  up(contact: Contact, good: boolean, at: number): void;
  /** A contact that began here has died or crossed the border. */
  changed(): void;
}

/** Milliseconds after an accepted press in which nothing is accepted. */
export const DEAD_MS = 600;
/** Milliseconds before something new on the screen may be pressed. */
export const ARM_MS = 400;
/** This many contacts, not all in one place, are a wet screen and no press. */
const SPREAD = 3;

/**
 * All contacts of one page, because a press is judged by what else touches the glass. The dead time
 * lives here and not in the button, so that a button drawn anew inherits it.
 */
export interface PressRoom {
  /** Milliseconds on any clock that does not run back. */
  now(): number;
  /**
   * When a hand did this, on the same clock. A busy page hears of it later, and of several at once: by the
   * time of its hearing a second quick tap would be another press, and a second digit the bounce of the first.
   */
  when(e: Event): number;
  readonly contacts: ReadonlyMap<number, Contact>;
  /**
   * Contacts that began in `el` are told to `home`, with `reach` also those in the empty ground around
   * it. Undone by the returned function.
   */
  settle(el: Element, home: Home, reach?: boolean): () => void;
  /** Whether the room as a whole accepts a press of this moment. */
  open(at: number): boolean;
  /** When anything last touched the glass, on `now`'s clock. */
  touchedAt(): number;
  /** Whether the last thing that came was a key and no touch. */
  keyed(): boolean;
  /** A press of this moment was taken: all contacts are spent and the dead time begins. */
  taken(at: number): void;
  /** Nothing on the screen may be pressed in the 400 ms from then on; contacts under way are spent. */
  hush(at: number): void;
  stop(): void;
}

export interface RoomOptions {
  readonly now?: () => number;
  /** The time of an event on the clock of `now`; the time it is heard of where only that clock is given. */
  readonly when?: (e: Event) => number;
  /** Asked at every touch and key before anything else; true means the touch is used up by it. */
  readonly firstTouch?: () => boolean;
}

/** No page is busy for longer, ms: what says that it is older has another clock. Judgement. */
const OLDEST = 10_000;

/** By the browser, where it can be: on the page's clock, not ahead of it and not from long ago. */
const stamped = (e: Event): number => {
  const now = performance.now();
  return e.timeStamp <= now && e.timeStamp > now - OLDEST ? e.timeStamp : now;
};

/**
 * How far the slab's ground reaches, in px: 6 mm, less than half of what parts it from all others, so that
 * a knuckle that slips off its rim is not lost. Nothing where the page has no millimetres.
 */
const reachOf = (el: Element): number => {
  const px = parseFloat(getComputedStyle(el).getPropertyValue('--reach'));
  return Number.isFinite(px) ? px : 0;
};

/** Watches a window's contacts until `stop`. */
export function makePressRoom(win: Window, options: RoomOptions = {}): PressRoom {
  const now = options.now ?? (() => performance.now());
  const when = options.when ?? (options.now ? () => now() : stamped);
  const contacts = new Map<number, Contact>();
  const homes = new WeakMap<Element, Home>();
  let takenAt = Number.NEGATIVE_INFINITY;
  let hushedAt = Number.NEGATIVE_INFINITY;
  let swallowing = false;
  let touchedAt = Number.NEGATIVE_INFINITY;
  let keyed = false;
  /** The contact just lifted has pressed something. */
  let pressed = false;
  const reaching = new Set<Element>();

  const spend = (): void => {
    for (const contact of contacts.values()) contact.live = false;
    for (const contact of contacts.values()) if (contact.home) homes.get(contact.home)?.changed();
  };
  const isInside = (el: Element, e: PointerEvent): boolean => {
    const box = el.getBoundingClientRect();
    const reach = reaching.has(el) ? reachOf(el) : 0;
    return (
      e.clientX >= box.left - reach &&
      e.clientX <= box.right + reach &&
      e.clientY >= box.top - reach &&
      e.clientY <= box.bottom + reach
    );
  };
  const homeOf = (e: PointerEvent): Element | null => {
    const target = e.target instanceof Element ? e.target : null;
    let el = target;
    while (el && !homes.has(el)) el = el.parentElement;
    // The ground around the slab is its own; what lies over it (a sheet, a lock) does not hold the slab.
    return el ?? [...reaching].find((near) => target?.contains(near) && isInside(near, e)) ?? null;
  };
  const useUp = (e: Event): boolean => {
    if (!options.firstTouch?.()) return false;
    room.hush(when(e));
    e.stopImmediatePropagation();
    return true;
  };

  const onDown = (e: PointerEvent): void => {
    swallowing = useUp(e);
    const at = when(e);
    touchedAt = at;
    keyed = false;
    const home = homeOf(e);
    const contact: Contact = { home, live: !swallowing && e.button === 0, inside: true };
    contacts.set(e.pointerId, contact);
    const places = new Set([...contacts.values()].map((c) => c.home ?? contacts));
    if (contacts.size >= SPREAD && places.size > 1) spend();
    if (home) homes.get(home)?.down(contact, at);
  };
  const onMove = (e: PointerEvent): void => {
    const contact = contacts.get(e.pointerId);
    if (!contact?.home || !contact.live) return;
    const inside = isInside(contact.home, e);
    if (inside === contact.inside) return;
    contact.inside = inside;
    homes.get(contact.home)?.changed();
  };
  const onUp = (e: PointerEvent): void => {
    const at = when(e);
    touchedAt = at;
    pressed = false;
    const contact = contacts.get(e.pointerId);
    if (!contact) return;
    contacts.delete(e.pointerId);
    if (!contact.home) return;
    const good = e.type === 'pointerup' && contact.live && isInside(contact.home, e);
    pressed = good;
    homes.get(contact.home)?.up(contact, good, at);
  };
  // Of a touch that pressed something no mouse and no click is made: they would move the focus, and the
  // browser is busy with them while the press waits for its answer.
  const onLifted = (e: TouchEvent): void => {
    if (pressed && e.cancelable) e.preventDefault();
    pressed = false;
  };
  const onKey = (e: KeyboardEvent): void => {
    keyed = true;
    // A key that is stuck, or under a foot since before it rang, is nobody's answer.
    if (!e.repeat && useUp(e)) e.preventDefault();
  };
  // The click a browser makes out of a touch that only silenced a call must not reach a link either.
  const onClick = (e: Event): void => {
    if (!swallowing) return;
    swallowing = false;
    e.preventDefault();
    e.stopImmediatePropagation();
  };
  // The window's own: a mouse takes the focus from another button on its way, and that is no leaving.
  const onBlur = (e: Event): void => {
    if (e.target instanceof Node) return;
    spend();
    contacts.clear();
  };

  const listeners: [string, (e: never) => void][] = [
    ['pointerdown', onDown],
    ['pointermove', onMove],
    ['pointerup', onUp],
    ['pointercancel', onUp],
    ['touchend', onLifted],
    ['keydown', onKey],
    ['click', onClick],
    ['blur', onBlur],
  ];
  for (const [type, then] of listeners) win.addEventListener(type, then as EventListener, true);
  // The screen was turned: what lies under a finger now is not what it came down on.
  const upright =
    typeof win.matchMedia === 'function' ? win.matchMedia('(orientation: portrait)') : null;
  upright?.addEventListener('change', spend);

  const room: PressRoom = {
    now,
    when,
    contacts,
    touchedAt: () => touchedAt,
    keyed: () => keyed,
    settle: (el, home, reach = false) => {
      homes.set(el, home);
      if (reach) reaching.add(el);
      // A press that takes its own button away: the end of its touch comes to the button, and to no window.
      el.addEventListener('touchend', onLifted as EventListener);
      return () => {
        homes.delete(el);
        reaching.delete(el);
      };
    },
    open: (at) => at - takenAt >= DEAD_MS && at - hushedAt >= ARM_MS,
    taken: (at) => {
      takenAt = at;
      spend();
    },
    hush: (at) => {
      hushedAt = at;
      spend();
    },
    stop: () => {
      upright?.removeEventListener('change', spend);
      for (const [type, then] of listeners)
        win.removeEventListener(type, then as EventListener, true);
    },
  };
  return room;
}

export const RoomContext = createContext<PressRoom>();
const rooms = new WeakMap<object, PressRoom>();

/**
 * The room of `now` where a clock is given, else that of the nearest `PressGround`, else one for the
 * whole page. The last and the first are made at their first use: one clock, one room, one dead time.
 */
export function usePressRoom(now?: () => number): PressRoom {
  const given = useContext(RoomContext);
  if (given && !now) return given;
  const key = now ?? window;
  let room = rooms.get(key);
  if (!room) rooms.set(key, (room = makePressRoom(window, now ? { now } : {})));
  return room;
}
