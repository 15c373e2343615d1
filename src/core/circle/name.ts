/** Letters of a name at most. Judgement: more does not stand on a press. */
export const NAME_LETTERS = 40;

/** More than this is not looked at: a file may hold anything. */
const LOOKED_AT = 4_000;

/**
 * A text as one line of at most so many characters: what cannot be seen is left out, blanks are one.
 *
 * @example
 * oneLine('  B of\n the mill ', 8) // → 'B of the'
 */
export const oneLine = (text: string, most: number): string => {
  const seen = text.slice(0, LOOKED_AT).replace(/[^\P{C}\s]/gu, '');
  return [...seen.replace(/\s+/g, ' ').trim()].slice(0, most).join('').trim();
};

/**
 * A neighbour's name as it is kept.
 *
 * @example
 * cleanName(' B ') // → 'B'
 */
export const cleanName = (text: string): string => oneLine(text, NAME_LETTERS);
