import type { Grain } from '../formula/formula.ts';

/** What a line of a sheet is to the formula; `none` is read over, as headings and sums are. */
export type LineKind =
  'flour' | 'water' | 'levain' | 'levainFlour' | 'levainWater' | 'salt' | 'filling' | 'none';

/** The kinds a baker may turn a line to. */
export const LINE_KINDS = ['flour', 'water', 'levain', 'salt', 'filling', 'none'] as const;

/** The words that our own sheets have in the column of kinds. */
export const KIND_WORDS: Readonly<Record<Exclude<LineKind, 'none'>, string>> = {
  flour: 'flour',
  water: 'water',
  levain: 'levain',
  levainFlour: 'levain flour',
  levainWater: 'levain water',
  salt: 'salt',
  filling: 'filling',
};

/** Words of ours for lines that follow from others, or are told twice. */
export const TOLD_TWICE = {
  all: 'all flour',
  sum: 'total',
  bowl: 'in the bowl',
  soaker: 'soaker water',
} as const;

const NAMES: readonly (readonly [RegExp, LineKind])[] = [
  [/\b(total|sum|summe|subtotal|hydration|dough weight|all flour|yield)\b|^dough$/, 'none'],
  [/\b(levain|leaven|starter|sourdough|sauerteig|anstellgut)\b/, 'levain'],
  [/^((fine|sea|table|kitchen|coarse) )*(salt|salz|sel|sal)$/, 'salt'],
  [/\b(water|wasser|eau|agua|acqua)\b/, 'water'],
  [/flour|mehl\b|farine|harina|farina|\bwhole ?meal\b|^(wheat|rye|spelt|barley)$/, 'flour'],
];

/** What a line seems to be, by its word in the column of kinds or else by its name. A guess. */
export function guessKind(kind: string, name: string): LineKind {
  const word = kind.trim().toLowerCase();
  if (word !== '') {
    const own = Object.entries(KIND_WORDS).find(([, said]) => said === word);
    if (own) return own[0] as LineKind;
    if (Object.values<string>(TOLD_TWICE).includes(word)) return 'none';
  }
  const text = name.trim().toLowerCase();
  if (text === '') return 'none';
  return NAMES.find(([pattern]) => pattern.test(text))?.[1] ?? 'filling';
}

/** The grain a flour's name tells of; wheat where it tells of none. A guess. */
export function guessGrain(name: string): Grain {
  const text = name.toLowerCase();
  if (/\brye\b|roggen|seigle|centeno|segale/.test(text)) return 'rye';
  if (/spelt|dinkel|épeautre|espelta|farro/.test(text)) return 'spelt';
  if (/barley|gerste|\borge\b|cebada|orzo/.test(text)) return 'barley';
  return /whole|vollkorn|intégral|integral/.test(text) ? 'wholeWheat' : 'wheat';
}
