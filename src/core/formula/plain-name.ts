/** What no page, sheet or calendar may hold, and what turns the writing of all that stands behind it. */
const UNSEEN =
  /[\u0000-\u0008\u000e-\u001f\u007f-\u0084\u0086-\u009f\u202a-\u202e\u2066-\u2069]|\p{Cs}|\p{Noncharacter_Code_Point}/gu;
const LINE_ENDS = /\r\n?|[\u000b\u000c\u0085\u2028\u2029]/g;

/**
 * A text of a formula as it is kept, its lines as they were: control signs, overrides of the direction of
 * writing, halves of letters and signs that are none are left out. What joins or marks letters stays.
 *
 * @example
 * plainNotes('rye\r\n\u202eflour') // → 'rye\nflour'
 */
export const plainNotes = (text: string): string =>
  text.replace(LINE_ENDS, '\n').replace(UNSEEN, '');

/**
 * The same in one line.
 *
 * @example
 * plainName('rye\n\u202eflour') // → 'rye flour'
 */
export const plainName = (text: string): string => plainNotes(text).replace(/[\n\t]/g, ' ');
