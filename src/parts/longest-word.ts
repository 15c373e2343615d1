/** Where a line of a label may end: at a blank, and at a soft hyphen, which then takes a letter's place. */
const BREAK = /\s+|(?<=\u00ad)/;
/** Half as wide again as the letters beside them. */
const BROAD = /[mw]/gi;

const lettersOf = (word: string): number => word.length + (word.match(BROAD)?.length ?? 0) / 2;

/**
 * How many letters the longest piece of a label has that no line end parts; the big letters of a slab are
 * fitted to it.
 */
export const longestWord = (text: string): number =>
  Math.max(4, ...text.split(BREAK).map(lettersOf));
