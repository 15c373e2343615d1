import { aloud } from './aloud.ts';
import { LONGEST, longestFor, wordsIn, type Pace } from './pace.ts';

/** Between sentences, s. */
const PAUSE = 0.5;

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/);

/** The longest that it can take to say, s, pauses between sentences with it. */
export const secondsToSay = (text: string, pace: Pace = 'grown'): number =>
  longestFor(wordsIn(aloud(text)), pace) + PAUSE * (sentencesOf(text).length - 1);

/**
 * What is said, in utterances that nobody has to hold in mind for more than 8 s: whole sentences, as many
 * as fit. A sentence that is longer by itself stands alone.
 *
 * @example
 * utterancesOf('Fold the dough.'); // ['Fold the dough.']
 */
export function utterancesOf(text: string, pace: Pace = 'grown'): readonly string[] {
  const made: string[] = [];
  for (const sentence of sentencesOf(text)) {
    const longer = `${made.at(-1)} ${sentence}`;
    if (made.length > 0 && secondsToSay(longer, pace) <= LONGEST) made[made.length - 1] = longer;
    else made.push(sentence);
  }
  return made;
}
