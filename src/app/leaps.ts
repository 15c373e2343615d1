import { createSignal, untrack } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Showing } from '../adapters/showing.ts';
import type { Fact } from '../core/records/fact.ts';
import { MINUTE, type Instant } from '../core/units.ts';
import type { Leaps } from '../screens/house.ts';
import type { KitchenTime, Leap, Moment } from './kitchen-time.ts';

/** Less is not worth a word. */
const TOLD = MINUTE;
const NAME = 'clock';
const NONE: Leaps = { back: null, ahead: null };

/**
 * Leaps of the device's clock while the page runs, as they are to be told. Back is sure. Ahead is a
 * sleep as well, for the steady clock may have slept too: it is asked about only where the page stood
 * in sight all the while, and then one beat later, for a page may hear late that it was hidden.
 *
 * @param nobodyLeft what looked like an absence was none
 */
export function makeLeaps(
  time: KitchenTime,
  showing: Showing,
  nobodyLeft: (since: Instant) => void,
) {
  const [leaps, setLeaps] = createSignal<Leaps>(NONE);
  /** Those ahead that are not answered, each by itself; what is told is their sum. */
  let open: readonly Leap[] = [];
  let known: Leap | null = null;
  let last = showing();
  let doubtful: { readonly leap: Leap; readonly showing: number | null } | null = null;
  return {
    leaps,
    /** Once a beat, after the clock was read. True where it went back, so that this is kept. */
    beat(): boolean {
      const leap = time.leapt();
      const isNew = leap !== known;
      known = leap;
      if (doubtful !== null) {
        const inSight = doubtful.showing !== null && doubtful.showing === showing();
        const asks = untrack(leaps).ahead?.inSight === true;
        // A sleep does not put away a question that stands; a clock may be set in two goes.
        if (inSight || !asks) {
          open = asks ? [...open, doubtful.leap] : [doubtful.leap];
          const by = open.reduce((sum, leap) => sum + leap.by, 0);
          const ahead = { by, from: open[0]!.from, inSight };
          setLeaps((old) => ({ ...old, ahead }));
        }
        if (inSight) nobodyLeft(doubtful.leap.from);
        doubtful = null;
      }
      if (isNew && leap !== null && leap.by > 0) doubtful = { leap, showing: last };
      last = showing();
      const back = isNew && leap !== null && leap.by < 0 ? leap : null;
      if (back !== null && back.by <= -TOLD) setLeaps((old) => ({ ...old, back }));
      return back !== null;
    },
    open: (): readonly Leap[] => open,
    read(which: keyof Leaps) {
      if (which === 'ahead') open = [];
      setLeaps((old) => ({ ...old, [which]: null }));
    },
  };
}

/** What the clock went back by is kept until the next fact carries it. */
export const keepMoment = (settings: Settings, moment: Moment, after: Fact | undefined): void =>
  void settings.set(NAME, { ...moment, after: after?.id }).catch(() => undefined);

/** The last moment that kitchen time is known at: of a clock that went back, else of the last fact. */
export async function lastMoment(settings: Settings, fact: Fact | null): Promise<Moment | null> {
  const kept = (await settings.get(NAME).catch(() => null)) as
    (Partial<Moment> & { readonly after?: unknown }) | null | undefined;
  if (fact === null || kept?.after !== fact.id) return fact;
  const { at, raw } = kept;
  return Number.isFinite(at) && Number.isFinite(raw) ? { at: at!, raw: raw! } : fact;
}
