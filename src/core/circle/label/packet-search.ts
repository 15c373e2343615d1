import {
  HIDDEN,
  NAMED,
  type PacketTongue,
  type PacketWord,
  type PacketWords,
} from './packet-words.ts';

const LETTER = '[\\p{L}\\p{N}]';
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Capitals are printed without their marks, and ß and œ as two letters. */
const LOOSE: Readonly<Record<string, string>> = {
  é: '[ée]',
  è: '[èe]',
  î: '[îi]',
  ï: '[ïi]',
  œ: '(?:œ|oe)',
  ü: '(?:ü|ue)',
  ß: '(?:ß|ss)',
};
const loose = (word: string): string =>
  escaped(word)
    .replace(/[éèîïœüß]/g, (sign) => LOOSE[sign]!)
    // The old spelling of Walnuss.
    .replace(/nuss$/, 'nu(?:ss|ß)');

/** Where a long word may be parted it has a soft hyphen, which no reader sees and no word has. */
export const unparted = (text: string): string => text.replaceAll('\u00ad', '');

const parts = (word: PacketWord): Exclude<PacketWord, string> =>
  typeof word === 'string' ? { word } : word;

/** A word with or without its plural, alone or before another word; never “milk-free”. */
function english(of: PacketWord): string {
  const { word, notAfter } = parts(of);
  const stem = escaped(word.replace(/(?<=...)s$/i, ''));
  const not = notAfter === undefined ? '' : `(?<!${notAfter})`;
  return `(?<!${LETTER})${not}${stem}(?:s|es)?(?!${LETTER})(?![- ]free)`;
}

/** A word with or without its plural; never “sans lait”. */
function french(of: PacketWord): string {
  const { word, notBefore } = parts(of);
  const not = notBefore === undefined ? '' : `(?!${notBefore})`;
  return `(?<!${LETTER})(?<!sans )${loose(word)}(?:s|x)?(?!${LETTER})(?![- ]free)${not}`;
}

/** German puts words together: one is found within another, never “milchfrei” nor “ohne Milch”. */
function german(of: PacketWord): string {
  const { word, notAfter, notBefore, begins, alone } = parts(of);
  const before = begins || alone ? `(?<!${LETTER})` : '';
  const not = notAfter === undefined ? '' : `(?<!${notAfter})`;
  const not2 = notBefore === undefined ? '' : `(?!${notBefore})`;
  const end = alone ? `(?!${LETTER})` : `(?:(?:e|n|en|es|s|er|ern)(?!${LETTER}))?`;
  return `${before}(?<!ohne )${not}${loose(word)}${not2}(?!\\p{L}{0,2}[- ]?fr(?:ei|ee))${end}`;
}

const PATTERN: Readonly<Record<PacketTongue, (of: PacketWord) => string>> = {
  en: english,
  fr: french,
  de: german,
};
const TONGUES = Object.keys(PATTERN) as PacketTongue[];

const lengthOf = (word: PacketWord): number => parts(word).word.length;

const anyOf = (
  words: readonly (readonly [PacketTongue, PacketWord])[],
  flags: string,
): RegExp | null =>
  words.length === 0
    ? null
    : new RegExp(
        words
          .toSorted(([, a], [, b]) => lengthOf(b) - lengthOf(a))
          .map(([tongue, word]) => PATTERN[tongue](word))
          .join('|'),
        flags,
      );

/** A name may be anything that a file had: only the table's own words count. */
const wordsOf = (
  table: Readonly<Record<string, PacketWords>>,
  name: string,
  tongues: readonly PacketTongue[],
): readonly (readonly [PacketTongue, PacketWord])[] => {
  const key = name.toLowerCase();
  const own = Object.hasOwn(table, key) ? table[key]! : null;
  return own === null ? [] : tongues.flatMap((one) => own[one].map((word) => [one, word] as const));
};

/** All the words that name the same, its own first. */
const wordsFor = (
  name: string,
  tongues: readonly PacketTongue[],
): readonly (readonly [PacketTongue, PacketWord])[] => {
  const known = wordsOf(NAMED, name, tongues);
  return Object.hasOwn(NAMED, name.toLowerCase()) ? known : [['en', name]];
};

/** Finds wherever one of the names stands in an unparted text, in the words of any tongue; null: there are no names. */
export const places = (names: readonly string[]): RegExp | null =>
  anyOf(
    names.flatMap((name) => wordsFor(name, TONGUES)),
    'giu',
  );

/** The tables' own words are made a search once: a saved circle may hold thousands of texts to look through. */
const searches = new Map<string, RegExp | null>();
function searchFor(key: string, isOwn: boolean, make: () => RegExp | null): RegExp | null {
  const had = searches.get(key);
  if (had !== undefined) return had;
  const made = make();
  if (isOwn) searches.set(key, made);
  return made;
}

/** Whether a name stands in a text, in the words of these tongues; left out: of any. */
export const isNamedIn = (
  text: string,
  name: string,
  tongues: readonly PacketTongue[] = TONGUES,
): boolean =>
  searchFor(`named ${tongues.join()} ${name}`, Object.hasOwn(NAMED, name.toLowerCase()), () =>
    anyOf(wordsFor(name, tongues), 'iu'),
  )?.test(unparted(text)) ?? false;

/** Whether a text holds it without naming it, in the words of any tongue. */
export const isHiddenIn = (text: string, name: string): boolean =>
  searchFor(`hidden ${name}`, Object.hasOwn(HIDDEN, name.toLowerCase()), () =>
    anyOf(wordsOf(HIDDEN, name, TONGUES), 'iu'),
  )?.test(unparted(text)) ?? false;

/** A text without the places where one of the names stands or is meant. */
export const withoutWords = (text: string, name: string): string =>
  [wordsFor(name, TONGUES), wordsOf(HIDDEN, name, TONGUES)].reduce((rest, words) => {
    const found = anyOf(words, 'giu');
    return found === null ? rest : rest.replace(found, ' ');
  }, unparted(text));
