/** Without the marks around it. */
export const bare = (words: string): string => words.replace(/^[\p{P}\s]+|[\p{P}\s]+$/gu, '');

const same = (a: string, b: string): boolean => bare(a).toLowerCase() === bare(b).toLowerCase();

/**
 * Which of these words belong to a phrase that somebody here wrote: 0 to none, else the number of the
 * phrase in this sentence. The longest phrase takes them.
 *
 * @example markOwn(['two', 'grams', 'of', 'quince'], [['of', 'quince']]) // [0, 0, 1, 1]
 */
export function markOwn(
  words: readonly string[],
  phrases: readonly (readonly string[])[],
): readonly number[] {
  const longest = phrases
    .filter((phrase) => phrase.some((word) => bare(word) !== ''))
    .toSorted((a, b) => b.length - a.length);
  const marked: number[] = [];
  let found = 0;
  while (marked.length < words.length) {
    const at = marked.length;
    const phrase = longest.find((one) => one.every((word, i) => same(word, words[at + i] ?? '')));
    if (phrase === undefined) {
      marked.push(0);
      continue;
    }
    found += 1;
    marked.push(...phrase.map(() => found));
  }
  return marked;
}
