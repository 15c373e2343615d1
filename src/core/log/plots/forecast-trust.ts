import { logPlots } from '../../speech/words/log-plots.ts';
import { fill } from '../../speech/fill.ts';
import type { Minutes } from '../../units.ts';
import type { ForecastError } from '../forecast-error.ts';

/** Bakes of which the last miss is told; fewer than this many in all tell nothing. Judgement. */
const LAST = 10;
export const ENOUGH = 5;
/** This share of doughs on one side of the told hour is no chance any more in a baker's eyes. Judgement. */
const LOPSIDED = 0.75;
/** Shares of bakes within their window from which on they are half of all, and most. */
const HALF = { least: 0.45, most: 0.55 } as const;

/** What first forecasts were worth. */
export interface Trust {
  /** Forecasts whose end is known: those of doughs found gone over are not, and are counted in `over`. */
  readonly known: number;
  readonly over: number;
  /** Of the last ten: how many there were, and by how much they missed on average, whichever way. */
  readonly last: number;
  readonly miss: Minutes | null;
  /** Forecasts that had a window, and how many were ready within it. */
  readonly windows: number;
  readonly held: number;
  /** How many took longer than told, and how many were ready sooner. */
  readonly later: number;
  readonly sooner: number;
}

/**
 * Whether a dough was ready within its window, both ends in it; null: nobody knows. One found gone over was
 * ready sooner than that: it is known only of one found before its window.
 */
export function isHeld({ window, ended, over }: ForecastError): boolean | null {
  if (window === null) return null;
  if (over) return ended < window.earliest ? false : null;
  return ended >= window.earliest && ended <= window.latest;
}

/**
 * What the first forecasts of bakes were worth, the latest bake first.
 *
 * @example
 * forecastTrust([]).miss // → null
 */
export function forecastTrust(forecasts: readonly ForecastError[]): Trust {
  const known = forecasts.filter(({ over }) => !over);
  const last = known.slice(0, LAST).map(({ late }) => Math.abs(late));
  const windows = known.filter(({ window }) => window !== null);
  return {
    known: known.length,
    over: forecasts.length - known.length,
    last: last.length,
    miss: last.length === 0 ? null : last.reduce((sum, one) => sum + one, 0) / last.length,
    windows: windows.length,
    held: windows.filter((one) => isHeld(one) === true).length,
    later: known.filter(({ late }) => late > 0).length,
    sooner: known.filter(({ late }) => late < 0).length,
  };
}

/** How a sentence writes its numbers: as they are shown, or as they are said. */
export interface Numbers {
  readonly count: (n: number) => string;
  readonly length: (minutes: Minutes) => string;
}

function heldSays({ windows, held }: Trust, count: Numbers['count']): string {
  const words = logPlots.forecast;
  const share = held / windows;
  const text =
    held === 0
      ? words.held0
      : share < HALF.least
        ? words.heldFew
        : share <= HALF.most
          ? words.heldHalf
          : words.heldMost;
  return fill(text, { count: count(held), n: count(windows) });
}

/**
 * What forecasts were worth, in plain sentences; where they are too few to tell, just that.
 */
export function trustSays(trust: Trust, { count, length }: Numbers): readonly string[] {
  const words = logPlots.forecast;
  const { known, last, miss, windows, later, sooner, over } = trust;
  const left =
    over === 0
      ? []
      : [over === 1 ? words.overLeftOne : fill(words.overLeft, { count: count(over) })];
  if (known === 0 && over === 0) return [words.none];
  if (known < ENOUGH)
    return [words.few, fill(words.fewCount, { count: count(known), n: count(ENOUGH) }), ...left];
  return [
    fill(words.miss, { count: count(last), length: length(Math.round(miss!)) }),
    ...(windows >= ENOUGH ? [heldSays(trust, count), words.meant] : []),
    ...(later / known >= LOPSIDED ? [words.later] : []),
    ...(sooner / known >= LOPSIDED ? [words.sooner] : []),
    ...left,
  ];
}
