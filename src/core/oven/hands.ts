import { MINUTE, type Instant, type Minutes } from '../units.ts';

/** Minutes round a lid call in which those hands load no other pot. Judgement. */
export const LID_CLEAR: Minutes = 2;

/** What one pot asks of the one pair of hands: loaded, lid off (null: it has none), out. */
export interface Calls {
  readonly loadAt: Instant;
  readonly lidAt: Instant | null;
  readonly outAt: Instant;
}

/** Nobody is at the oven, from one instant until the other. */
export interface Away {
  readonly from: Instant;
  readonly until: Instant;
}

/** How a loaf that is about to be loaded would call. Minutes from its loading; lid 0: it has none. */
export interface Asks {
  readonly load: Minutes;
  readonly lid: Minutes;
  readonly out: Minutes;
}

/** Strictly between its ends nothing can be loaded. */
type Gap = readonly [from: Instant, until: Instant];

/**
 * Where a loading cannot end, since the hands are elsewhere. It takes `load` minutes before its instant:
 * - another loading less than `load` minutes away, before or after;
 * - a lid call of another pot within two minutes of those hands, or the new loaf's own lid call within
 *   two minutes of a loading that is settled;
 * - a loaf that has to come out meanwhile;
 * - hands that are away: at the loading, or when the new loaf would call them.
 */
function gapsOf(
  { load, lid, out }: Asks,
  others: readonly Calls[],
  away: readonly Away[],
): readonly Gap[] {
  const [h, l, o, c] = [load, lid, out, LID_CLEAR].map((minutes) => minutes * MINUTE) as [
    number,
    number,
    number,
    number,
  ];
  const gaps: Gap[] = [];
  for (const { loadAt, lidAt, outAt } of others) {
    gaps.push([loadAt - h, loadAt + h], [outAt, outAt + h], [loadAt - h - o, loadAt - o]);
    if (lidAt !== null) gaps.push([lidAt - c, lidAt + h + c]);
    if (l > 0) gaps.push([loadAt - h - c - l, loadAt + c - l]);
  }
  for (const { from, until } of away) {
    gaps.push([from, until + h], [from - o, until - o]);
    if (l > 0) gaps.push([from - l, until - l]);
  }
  return gaps;
}

/**
 * The first instant from `from` on at which one pair of hands can have loaded a loaf that asks so much
 * of them, beside what other pots ask. Always finite: put off, never given up.
 * Source: judgement; nobody lifts a lid with a loaf in the other hand.
 *
 * @example
 * firstLoading(0, { load: 3, lid: 20, out: 45 }, [{ loadAt: 0, lidAt: 1200000, outAt: 2700000 }], []) // → 180000
 */
export function firstLoading(
  from: Instant,
  asks: Asks,
  others: readonly Calls[],
  away: readonly Away[],
): Instant {
  let at = from;
  const ahead = gapsOf(asks, others, away).filter(([, ends]) => ends > from);
  for (const [begins, ends] of ahead.toSorted(([a], [b]) => a - b)) {
    if (begins < at && at < ends) at = ends;
  }
  return at;
}
