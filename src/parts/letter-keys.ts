/**
 * The keys that write words, and what each makes of the text. The letters stand from a to z: a knuckle
 * hunts for each key by itself, nobody's ten fingers know the way over keys this far apart, and a child
 * who has learnt the alphabet has learnt this order, in every tongue of the tablet.
 */

/** What a key does that writes no sign of its own. */
export type LetterDeed = 'blank' | 'erase' | 'eraseWord' | 'line' | 'capital' | 'more' | 'page';

/** A sign that is written, or a deed: every sign is one letter, every deed a word. */
export type LetterKey = string;

export type LetterPage = 'letters' | 'signs' | 'more';

/** What stands under all pages in the same place: the hand that knows them need not look. */
export const BELOW: readonly LetterKey[] = ['page', 'blank', 'erase', 'eraseWord'];

/** Each as many as there are letters, so that no key of `BELOW` moves from page to page. */
export const PAGES: Readonly<Record<LetterPage, readonly LetterKey[]>> = {
  letters: [...'abcdefghijklmnopqrstuvwxyz'],
  signs: [...'1234567890', ...",.'-?", ...'éèêàçäöüß', 'capital', 'more'],
  more: [...'âîïôûùëœæáíóúñ', ...'!:;()/%+&°', 'line', 'more'],
};

/** The page that `key` leads to. A word goes on in letters after a letter, an apostrophe, a hyphen or a blank. */
export function pageAfter(page: LetterPage, key: LetterKey): LetterPage {
  if (key === 'page') return page === 'letters' ? 'signs' : 'letters';
  if (key === 'more') return page === 'signs' ? 'more' : 'signs';
  if (key === 'capital' || key === 'blank' || key === 'line') return 'letters';
  return /^[\p{L}'-]$/u.test(key) ? 'letters' : page;
}

/** A text, and where the next letter goes: between `from` and `to`, in UTF-16 units, what is marked in between. */
export interface Writing {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** Whether a sentence begins after this: at the very start, on a new line, or after its stop and a blank. */
export const beginsSentence = (before: string): boolean =>
  /(^|[.?!…]["')»”’]*\s|\n)\s*$/u.test(before);

/** Whether the next letter is a capital; `turned` is the key that has it the other way. */
export const isCapital = ({ text, from }: Writing, turned: boolean): boolean =>
  beginsSentence(text.slice(0, from)) !== turned;

/** As it is written, in capitals or not. There is no capital of ß on most papers, and two letters are no key. */
export const faceOf = (key: LetterKey, capital: boolean): string =>
  capital && key.length === 1 && key !== 'ß' ? key.toUpperCase() : key;

const put = ({ text, from, to }: Writing, what: string): Writing => {
  const at = from + what.length;
  return { text: text.slice(0, from) + what + text.slice(to), from: at, to: at };
};

/**
 * What stands after one more key. A letter past `most` changes nothing; nor does erasing nothing.
 *
 * @param key what is pressed; 'page', 'more' and 'capital' write nothing
 * @param most letters at most, in UTF-16 units, as a field's `maxlength` counts
 * @example
 * writeKey({ text: 'Rye and ', from: 8, to: 8 }, 'eraseWord', 80) // → { text: 'Rye ', from: 4, to: 4 }
 */
export function writeKey(writing: Writing, key: LetterKey, most: number): Writing {
  const { text, from, to } = writing;
  if (key === 'page' || key === 'more' || key === 'capital') return writing;
  if (key === 'erase' || key === 'eraseWord') {
    if (to > from) return put(writing, '');
    const before = text.slice(0, from);
    // A letter with its accent, or a drawn face, is one.
    const gone =
      key === 'erase'
        ? /(?:\P{M}\p{M}*|\p{M}+)$/u.exec(before)?.[0]
        : /(?:[^\s]+\s*|\s+)$/u.exec(before)?.[0];
    return put({ text, from: from - (gone?.length ?? 0), to }, '');
  }
  const sign = key === 'blank' ? ' ' : key === 'line' ? '\n' : key;
  return text.length - (to - from) + sign.length > most ? writing : put(writing, sign);
}
