/** More parts than this, no letter that is written has: accents upon accents without end. Judgement. */
const PARTS = 40;

/**
 * The beginning of a text, of at most so many UTF-16 units, that ends behind a whole letter: a pair of units
 * stays a pair, and what is joined to a letter stays with it (grapheme clusters, Unicode UAX #29). Of a letter
 * that is longer than all of it, nothing stays but its whole signs.
 *
 * @example
 * cutText('rye 🥖', 5) // → 'rye '
 */
export function cutText(text: string, most: number): string {
  if (text.length <= most) return text;
  // No more is looked at than the letter that is cut may need.
  const near = text.slice(0, most + PARTS);
  let end = 0;
  for (const { index, segment } of new Intl.Segmenter().segment(near)) {
    if (index + segment.length > most) break;
    end = index + segment.length;
  }
  if (end > 0) return text.slice(0, end);
  return text.slice(0, most).replace(/[\ud800-\udbff]$/, '');
}
