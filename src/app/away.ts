import { createSignal, type Accessor } from 'solid-js';
import type { Instant } from '../core/units.ts';

/** Away longer than this, and what happened meanwhile is told. */
const AWAY_MS = 30_000;

export interface Away {
  readonly away: Accessor<{ readonly from: Instant; readonly to: Instant } | null>;
  /** The page was seen at this kitchen instant; a gap in that is an absence. */
  seen(at: Instant): void;
  readBack(): void;
  /** Nobody was away: what began then was a leap of the clock. An absence before it stands. */
  notSince(at: Instant): void;
}

/** @param last kitchen instant of the last fact before this page, or null; real time counts by `rate` */
export function makeAway(last: Instant | null, rate: number): Away {
  const [away, setAway] = createSignal<{ from: Instant; to: Instant } | null>(null);
  let before = last;
  return {
    away,
    seen(at) {
      if (before !== null && at - before > AWAY_MS * rate) {
        setAway({ from: away()?.from ?? before, to: at });
      }
      before = at;
    },
    readBack: () => setAway(null),
    notSince(at) {
      setAway((old) => (old !== null && at - old.from < AWAY_MS * rate ? null : old));
    },
  };
}
