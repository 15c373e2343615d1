/** Of one name or line on a label. Judgement. */
const MOST = 200;
const UNSEEN = /[\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu;
const BLANK = /[\p{Cc}\p{Z}\s]+/gu;

/**
 * A text as it may stand on a label: letters put together (NFC), control signs, marks that turn the
 * direction of reading and line ends gone, one blank between words, at most 200 characters.
 *
 * @example
 * plainText(' rye\n\u202eflour ') // → 'rye flour'
 */
export const plainText = (text: string): string =>
  [...text.normalize('NFC').replace(UNSEEN, '').replace(BLANK, ' ').trim()].slice(0, MOST).join('');
