/** No-break space, and the hyphen at which no line ends. */
const SPACE = '\u00a0';
const HYPHEN = '\u2011';

/** What a number is never parted from. */
const UNITS = 'kg|g|oz|lb|°C|°F|mm|cm|m|ml|l|h|min|s|%';

const PAIR = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');
/** "1 h 05": the minutes stay with their hours. */
const HOURS = /(?<=\d) h (?=\d\d(?!\d))/g;
const HYPHENED = /(?<=\p{L})-(?=\p{L})/gu;

/**
 * The same words for eyes, so wrapped that a number and its unit, an hour and its minutes, and the
 * halves of a hyphened word stay in one line.
 * @example unbroken('Stand 1 m back') // '1' and 'm' with a no-break space between
 */
export const unbroken = (text: string): string =>
  text.replace(HOURS, `${SPACE}h${SPACE}`).replace(PAIR, `$1${SPACE}`).replace(HYPHENED, HYPHEN);
