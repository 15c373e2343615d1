import { gamma } from '../../clock/gamma.ts';
import type { Path } from '../../clock/stretch.ts';
import { theta } from '../../clock/theta.ts';
import { driftedTo, driftPath } from '../../heat/drift.ts';
import { cut } from '../dough-path.ts';
import { HOUR, MINUTE, type Celsius, type Hours, type Instant, type Minutes } from '../../units.ts';

/** A ready window: one in ten is sooner than `earliest`, one in ten later than `latest`. */
export interface Window {
  readonly earliest: Instant;
  readonly likely: Instant;
  readonly latest: Instant;
}

/** A stay elsewhere. `tau`: of the body, h; `body`: how warm it is now. */
export interface Stay {
  readonly now: Instant;
  readonly from: Instant;
  readonly to: Instant;
  readonly place: Celsius;
  readonly room: Celsius;
  readonly body: Celsius;
  readonly tau: Hours;
}

/** Nobody looks further, h. Judgement. */
const HORIZON: Hours = 120;
/** How near an hour is found, h. Judgement. */
const CLOSE: Hours = 1 / 120;

const drift = (from: Celsius, toward: Celsius, tau: Hours): Path =>
  driftPath({ from, tau, offset: 0 }, [{ hours: 0, celsius: toward }], HORIZON);

/** The first hour of a path by which so much has grown. */
function hourOf(path: Path, growth: number): Hours {
  let [low, high] = [0, HORIZON];
  if (theta(path, 0, high) < growth) return high;
  while (high - low > CLOSE) {
    const middle = (low + high) / 2;
    if (theta(path, 0, middle) >= growth) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * A ready window once a levain or dough has stood somewhere else for a while: what it still has to grow
 * in the room it grows on its way there, there, and on its way back, by Newton's law and the dough
 * clock. A big bowl cools slowly: `works` is how long it would have taken in the room, min, to grow what
 * it grows there. Limit: that a cold dough holds more of its gas is left out; it makes it a little later.
 *
 * @example
 * braked({ earliest: 0, likely: 0, latest: 0 }, { now: 0, from: 0, to: 12600000, place: 4, room: 24, body: 24, tau: 5 }).works // → 123.2
 */
export function braked(
  { earliest, likely, latest }: Window,
  { now, from, to, place, room, body, tau }: Stay,
): Window & { readonly works: Minutes } {
  const hours = (at: Instant): Hours => Math.max(0, at - now) / HOUR;
  const here = drift(body, room, tau);
  const goes = driftedTo(
    { from: body, tau, offset: 0 },
    [{ hours: 0, celsius: room }],
    hours(from),
  );
  const there = cut(drift(goes, place, tau), hours(to) - hours(from));
  const air = [{ hours: 0, celsius: place }];
  const back = driftedTo({ from: goes, tau, offset: 0 }, air, hours(to) - hours(from));
  const way = [...cut(here, hours(from)), ...there, ...drift(back, room, tau)];
  const moved = (at: Instant): Instant =>
    Math.round(now + hourOf(way, theta(here, 0, hours(at))) * HOUR);
  const grown = theta(way, hours(from), hours(to));
  return {
    earliest: moved(earliest),
    likely: moved(likely),
    latest: moved(latest),
    works: (grown / gamma(room)) * (HOUR / MINUTE),
  };
}
