/** One tone of a call: when it begins, in seconds since the call was due, and how loud, in dB. */
export interface Tone {
  readonly at: number;
  readonly db: number;
}

type Kind = 'look' | 'act' | 'hot';

/** Seconds between the tones of a burst: so look sounds three times, act ten, hot twenty. */
const EVERY: Readonly<Record<Kind, number>> = { look: 20, act: 6, hot: 3 };
/** A burst lasts at most this long, s. */
const BURST = 60;
/** look and act remind once, this long after they were due, s. */
const REMINDER = 300;
/** hot does not go quiet by itself: food or people are at risk until someone has heard it, s. */
const HOT_AFTER = 20;

/**
 * Loudness of a call `at` seconds after it was due, dB below full: −12, from 15 s −6, from 45 s full;
 * hot begins at −6. Judgement, after alarm practice: loud enough only when gentle was not.
 */
export function loudnessAt(kind: Kind, at: number): number {
  if (at >= 45) return 0;
  return at >= 15 || kind === 'hot' ? -6 : -12;
}

/**
 * The `n`-th tone (from 0) of a call that is first sounded `from` seconds after it was due: one burst
 * up to 60 s, one reminder at five minutes, then quiet (null), safety excepted. A call that comes late
 * sounds at once, however late, and goes on from the loudness it has come to; within a minute before
 * its reminder it takes the reminder's place.
 *
 * @example
 * toneOf('look', 1); // { at: 20, db: -6 }
 * toneOf('look', 0, 31.5); // { at: 31.5, db: -6 }
 */
export function toneOf(kind: Kind, n: number, from = 0): Tone | null {
  const every = EVERY[kind];
  const inBurst = Math.max(1, Math.ceil((BURST - from) / every));
  const tone = (at: number): Tone => ({ at, db: loudnessAt(kind, at) });
  if (n < inBurst) return tone(from + n * every);
  const after = n - inBurst;
  if (kind === 'hot') return tone(from + (inBurst - 1) * every + (after + 1) * HOT_AFTER);
  return after === 0 && from < REMINDER - BURST ? tone(REMINDER) : null;
}
