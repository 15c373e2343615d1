import { syllables } from './syllables.ts';

/** How fast is spoken: for grown-ups, or for small hands. */
export type Pace = 'grown' | 'small';

interface Limits {
  /** Words a minute. */
  readonly least: number;
  readonly most: number;
  /** Syllables a second; null where words say it all. */
  readonly syllables: number | null;
}

/**
 * 140–160 words a minute, and 115–130 with at most 3.4 syllables a second for children (Berry and
 * Erickson 1973). Pauses between sentences do not count.
 */
export const PACES: Readonly<Record<Pace, Limits>> = {
  grown: { least: 140, most: 160, syllables: null },
  small: { least: 115, most: 130, syllables: 3.4 },
};

/**
 * Words of the catalogue have so many syllables. Numbers have more, and are no slower for it: too slow
 * is what is below the least in words and in syllables.
 */
export const SYLLABLES_A_WORD = 1.2;

/** Fewer words than this have no rate of their own: one long word is a slow minute. Judgement. */
export const RATED_FROM = 4;

/** What is said at once is over within this, s. */
export const LONGEST = 8;

/** Kept off the edges: clips are cut to milliseconds, not to words. */
const INSIDE = 0.015;
/** Speech stays speech within this: further it drawls or gabbles. Judgement. */
const MOST_STRETCH = 1.4;
const LEAST_STRETCH = 0.75;

/** What is said in one breath or several: how long its clips sound, s, and how long it pauses at commas. */
export interface Spoken {
  readonly words: readonly string[];
  readonly seconds: number;
  readonly pauses: number;
}

/** Words as they are counted for a rate: "twenty-five" is two. */
export const wordsIn = (text: string): readonly string[] =>
  text.split(/[\s-]+/).filter((word) => /[a-z0-9]/i.test(word));

/** How fast it is spoken, pauses at commas counted: words a minute and syllables a second. */
export function rateOf({ words, seconds, pauses }: Spoken): { wpm: number; syllables: number } {
  const long = seconds + pauses;
  return { wpm: (words.length * 60) / long, syllables: syllablesIn(words) / long };
}

const syllablesIn = (words: readonly string[]): number =>
  words.reduce((sum, word) => sum + syllables(word), 0);

/** Whether it is as fast as it should be; a few words are never too slow. */
export function isPaced(spoken: Spoken, pace: Pace): boolean {
  const limits = PACES[pace];
  const rate = rateOf(spoken);
  if (limits.syllables !== null && rate.syllables > limits.syllables) return false;
  if (spoken.words.length < RATED_FROM) return true;
  return rate.wpm <= limits.most && slowness(rate, limits) >= 1;
}

/** Below 1 where it is too slow. */
const slowness = (rate: { wpm: number; syllables: number }, { least }: Limits): number =>
  Math.max(rate.wpm / least, (rate.syllables * 60) / (least * SYLLABLES_A_WORD));

/**
 * How much longer its clips must take for it to be as fast as it should be: 1 where it is already, more
 * where it is slowed down. Its pauses stay as they are. What would take too long to hold in mind is as
 * fast as it may be.
 *
 * @example stretchFor({ words: ['fold', 'the', 'dough', 'up'], seconds: 1.6, pauses: 0 }, 'small') // about 1.17
 */
export function stretchFor(spoken: Spoken, pace: Pace): number {
  if (spoken.words.length === 0) return 1;
  const limits = PACES[pace];
  const rate = rateOf(spoken);
  const isRated = spoken.words.length >= RATED_FROM;
  const long = spoken.seconds + spoken.pauses;
  const least =
    long *
    (1 + INSIDE) *
    Math.max(
      isRated ? rate.wpm / limits.most : 0,
      limits.syllables === null ? 0 : rate.syllables / limits.syllables,
    );
  const most = isRated ? long * (1 - INSIDE) * slowness(rate, limits) : long;
  const paced = isPaced(spoken, pace) ? long : least > long ? least : most;
  const wanted = paced > LONGEST ? Math.min(paced, Math.max(least, LONGEST)) : paced;
  const by = (wanted - spoken.pauses) / spoken.seconds;
  return Math.min(MOST_STRETCH, Math.max(LEAST_STRETCH, by));
}

/**
 * The longest that words can take at a pace, s, when they are brought to it: what is slower in words
 * than the least is not slower in syllables.
 */
export const longestFor = (words: readonly string[], pace: Pace): number => {
  const { least } = PACES[pace];
  return (Math.max(words.length, syllablesIn(words) / SYLLABLES_A_WORD) * 60) / least;
};
