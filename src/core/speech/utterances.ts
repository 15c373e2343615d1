import { aloud } from './aloud.ts';
import { LONGEST, longestFor, wordsIn, type Pace } from './pace.ts';

/** Between sentences, s. */
const PAUSE = 0.5;

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/);

/** Sentences, and what a blank that does not break holds together. */
const heldTogether = (text: string): readonly string[] => text.split(/(?<=[.?!])[^\S\u00a0]+/);

/** A sentence behind another may begin with a number in words: it is read as well as heard. */
const begunLarge = (text: string): string =>
  text.replace(/(?<=[.?!]\s)\p{Ll}/gu, (letter) => letter.toUpperCase());

/** The longest that it can take to say, s, pauses between sentences with it. */
export const secondsToSay = (text: string, pace: Pace = 'grown'): number =>
  longestFor(wordsIn(aloud(text)), pace) + PAUSE * (sentencesOf(text).length - 1);

/**
 * What is said, in utterances that nobody has to hold in mind for more than 8 s: whole sentences, as many
 * as fit. A sentence that is longer by itself stands alone. Two with a no-break space between them stay
 * together while they fit.
 *
 * @example
 * utterancesOf('Fold the dough.'); // ['Fold the dough.']
 */
export function utterancesOf(text: string, pace: Pace = 'grown'): readonly string[] {
  const made: string[] = [];
  const add = (part: string): void => {
    const longer = `${made.at(-1)} ${part}`;
    if (made.length > 0 && secondsToSay(longer, pace) <= LONGEST) made[made.length - 1] = longer;
    else made.push(part);
  };
  for (const held of heldTogether(begunLarge(text))) {
    const sentences = sentencesOf(held);
    if (secondsToSay(held, pace) <= LONGEST) add(sentences.join(' '));
    else sentences.forEach(add);
  }
  return made;
}
