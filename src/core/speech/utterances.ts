import { aloud } from './aloud.ts';

/**
 * An utterance is over within this, s, at this pace, words a minute, with these pauses between sentences
 * and within them, s.
 */
const MOST = 8;
const PACE = 150;
const PAUSE = 0.5;
const COMMA = 0.25;

const wordsIn = (text: string): number =>
  aloud(text)
    .trim()
    .split(/[\s-]+/).length;

const commasIn = (text: string): number => aloud(text).match(/[,:;](?=\s)/g)?.length ?? 0;

/** How long it takes to say, s. Judgement: words, and a pause at every mark within and between sentences. */
export const secondsToSay = (text: string): number =>
  (wordsIn(text) / PACE) * 60 + COMMA * commasIn(text) + PAUSE * (sentencesOf(text).length - 1);

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/);

/**
 * What is said, in utterances that nobody has to hold in mind for more than 8 s: whole sentences, as many
 * as fit. A sentence that is longer by itself stands alone.
 *
 * @example
 * utterancesOf('Fold the dough.'); // ['Fold the dough.']
 */
export function utterancesOf(text: string): readonly string[] {
  const made: string[] = [];
  for (const sentence of sentencesOf(text)) {
    const longer = `${made.at(-1)} ${sentence}`;
    if (made.length > 0 && secondsToSay(longer) <= MOST) made[made.length - 1] = longer;
    else made.push(sentence);
  }
  return made;
}
