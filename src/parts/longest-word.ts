/** Where a line of a label may end: at a blank, and at a soft hyphen, which then takes a letter's place. */
const BREAK = /\s+|(?<=\u00ad)/;

/** Letters of the longest piece of a label that no line end parts; the big letters of a slab are fitted to it. */
export const longestWord = (text: string): number =>
  Math.max(4, ...text.split(BREAK).map((word) => word.length));
