import { aloud } from './aloud.ts';
import { wordsIn, type Spoken } from './pace.ts';
import { bare, markOwn } from './own-words.ts';

/** One clip to play, and the silence that follows it, s. */
export interface Played {
  readonly id: string;
  readonly pause: number;
}

export interface Laid {
  readonly clips: readonly Played[];
  /** Words that no clip holds: they are read in the caption. */
  readonly missing: readonly string[];
  /** Those of them that somebody here wrote, a phrase each, for a voice that can say any word. */
  readonly own: readonly string[];
}

/** Silence behind a sentence, and inside one where a comma or a colon stands between clips, s. */
const SENTENCE = 0.5;
const COMMA = 0.15;

/** A clip may hold this many words. */
const LONGEST = 30;

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/);

/**
 * The name of the clip that says these words: small letters, without the marks between them.
 *
 * @example clipId('Hot, now:') // 'hot now'
 */
export const clipId = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[^a-z0-9' -]/g, '')
    .trim()
    .replace(/ +/g, ' ');

const pauseAfter = (word: string): number => (/[,:;]$/.test(word) ? COMMA : 0);

/** A clip's name keeps only these: of other words it does not tell which they are. */
const PLAIN = /^[\x20-\x7e]*$/;

/**
 * The fewest clips that say all of these words, a word no clip holds counting as very many. What somebody
 * here wrote is said whole by a clip or not at all: half a name is none.
 */
function laySentence(
  sentence: string,
  has: (id: string) => boolean,
  own: readonly (readonly string[])[],
): Laid {
  const all = sentence.split(' ');
  const marked = markOwn(all, own);
  const kept = all.flatMap((word, i) =>
    clipId(word) !== '' || marked[i] !== 0 ? [{ word, phrase: marked[i]! }] : [],
  );
  const words = kept.map(({ word }) => word);
  const phrases = kept.map(({ phrase }) => phrase);
  const cost: number[] = new Array<number>(words.length + 1).fill(0);
  const next: number[] = new Array<number>(words.length).fill(0);
  const id = (from: number, to: number): string => clipId(words.slice(from, to).join(' '));
  const isWhole = (from: number, to: number): boolean =>
    phrases
      .slice(from, to)
      .every(
        (phrase, i) =>
          phrase === 0 ||
          (phrase !== phrases[from - 1] &&
            phrase !== phrases[to] &&
            PLAIN.test(words[from + i]!.replaceAll('’', "'"))),
      );
  for (let from = words.length - 1; from >= 0; from -= 1) {
    cost[from] = 1000 + cost[from + 1]!;
    for (let to = Math.min(words.length, from + LONGEST); to > from; to -= 1) {
      if (1 + cost[to]! >= cost[from]! || !isWhole(from, to) || !has(id(from, to))) continue;
      cost[from] = 1 + cost[to]!;
      next[from] = to;
    }
  }
  const clips: Played[] = [];
  const missing: string[] = [];
  const unsaid = new Map<number, string[]>();
  for (let from = 0; from < words.length;) {
    const to = next[from]!;
    if (to === 0) {
      missing.push(words[from]!);
      const phrase = phrases[from]!;
      if (phrase !== 0) unsaid.set(phrase, [...(unsaid.get(phrase) ?? []), words[from]!]);
    } else clips.push({ id: id(from, to), pause: pauseAfter(words[to - 1]!) });
    from = to === 0 ? from + 1 : to;
  }
  return { clips, missing, own: [...unsaid.values()].map((phrase) => bare(phrase.join(' '))) };
}

/**
 * What is to be played for an utterance: as few clips as say it, half a second between sentences.
 * `has` tells whether there is a clip of that name; `own` are phrases that somebody here wrote, as they
 * stand in sentences.
 */
export function layClips(
  words: string,
  has: (id: string) => boolean,
  own: readonly string[] = [],
): Laid {
  const phrases = own.map((phrase) => aloud(phrase).split(/\s+/));
  const sentences = sentencesOf(aloud(words)).map((one) => laySentence(one, has, phrases));
  return {
    clips: sentences.flatMap(({ clips }, i) =>
      clips.map((clip, j) =>
        j === clips.length - 1
          ? { ...clip, pause: i === sentences.length - 1 ? 0 : SENTENCE }
          : clip,
      ),
    ),
    missing: sentences.flatMap(({ missing }) => missing),
    own: sentences.flatMap((sentence) => sentence.own),
  };
}

/** How long clips take one after another, s; `seconds` tells how long each one is. */
export const secondsOf = (clips: readonly Played[], seconds: (id: string) => number): number =>
  clips.reduce((sum, { id, pause }) => sum + seconds(id) + pause, 0);

/** What clips say and how long they take; `seconds` tells how long each one is. */
export const spokenBy = (clips: readonly Played[], seconds: (id: string) => number): Spoken => ({
  words: clips.flatMap(({ id }) => wordsIn(id)),
  seconds: clips.reduce((sum, { id }) => sum + seconds(id), 0),
  pauses: clips.reduce((sum, { pause }) => sum + (pause < SENTENCE ? pause : 0), 0),
});
