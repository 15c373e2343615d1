/**
 * What a sentence in another tongue is in English. The spoken clips are English: where the tablet has
 * no voice of a tongue, its captions stand in that tongue and the clips are found by these. A sentence
 * is known from where it was made: a catalogue's line as it is read, a filled template as it is filled.
 */
const twins = new Map<string, string>();

/** More than one page makes; the oldest are let go. */
const MOST = 4000;

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/);
/** A sentence behind another begins large, wherever it was made. */
const key = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

function put(words: string, english: string): void {
  twins.delete(key(words));
  twins.set(key(words), english);
  if (twins.size > MOST) twins.delete(twins.keys().next().value as string);
}

/** Notes what these words are in English: of several sentences, each of them too. */
export function remember(words: string, english: string): void {
  if (words === english) return;
  const its = sentencesOf(words);
  const others = sentencesOf(english);
  if (its.length > 1 && its.length === others.length)
    its.forEach((one, i) => put(one, others[i] as string));
  put(words, english);
}

/** The English of words that were made of a catalogue; null where they were not. */
export const englishOf = (words: string): string | null => twins.get(key(words)) ?? null;

/**
 * The English of all that is said: as it was made, or sentence by sentence, as many at once as are known.
 * What nobody noted is left out: its caption stands.
 */
export function englishOfAll(words: string): string {
  const whole = englishOf(words);
  if (whole !== null) return whole;
  const all = sentencesOf(words);
  const found: string[] = [];
  for (let from = 0; from < all.length;) {
    let to = all.length;
    while (to > from && englishOf(all.slice(from, to).join(' ')) === null) to -= 1;
    if (to > from) found.push(englishOf(all.slice(from, to).join(' ')) as string);
    from = Math.max(to, from + 1);
  }
  return found.join(' ');
}
