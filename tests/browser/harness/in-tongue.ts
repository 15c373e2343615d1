import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { soft as softGerman } from '../../../src/core/speech/de/soft.ts';
import { soft as softFrench } from '../../../src/core/speech/fr/soft.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';

/** The tongues the pages are walked in beside English, each with the language of a tablet that speaks it. */
export const LOCALES = { de: 'de-DE', fr: 'fr-FR' } as const;
export type OtherTongue = keyof typeof LOCALES;

interface Pair {
  readonly english: string;
  readonly other: string;
}

const english = import.meta.glob<Readonly<Record<string, unknown>>>(
  '../../../src/core/speech/words/*.ts',
  { eager: true },
);

function pairsOf(own: unknown, other: unknown): Pair[] {
  if (typeof own === 'string')
    return typeof other === 'string' && other !== '' ? [{ english: own, other }] : [];
  if (typeof own !== 'object' || own === null) return [];
  return Object.entries(own).flatMap(([key, value]) =>
    pairsOf(value, (other as Readonly<Record<string, unknown>> | undefined)?.[key]),
  );
}

const allOf = (tongue: OtherTongue): Pair[] =>
  Object.entries(english).flatMap(([path, words]) => {
    const file = /([\w-]+)\.ts$/.exec(path)![1]!;
    return pairsOf(words, { de, fr }[tongue][file]);
  });

const NAME = /\{\w+\}/g;
/** Soft hyphens are no letters, and Playwright looks past them. */
const plain = (text: string): string => text.replaceAll('\u00ad', '').trim();
const escaped = (text: string): string => text.replace(/[.*+?^$()|[\]\\]/g, '\\$&');

/** What a template says in the other tongue where the English words are that template, filled with words or data. */
function refilled(pairs: readonly Pair[], { english: own, other }: Pair, words: string): string[] {
  const names: readonly string[] = own.match(NAME) ?? [];
  if (names.length === 0 || own.replace(NAME, '').trim().length < 3) return [];
  const shape = own.split(NAME).map(escaped).join('(.+)');
  const found = new RegExp(`^${shape}$`, 'i').exec(words);
  if (!found) return [];
  return [
    other.replace(NAME, (name) => {
      const value = found[names.indexOf(name) + 1] ?? name;
      // A day is named by the clock, and not as a hand's mark that is called so.
      if (value.replace(DAY, '') === '') return value;
      return pairs.find((pair) => pair.english === value)?.other ?? value;
    }),
  ];
}

/** The longest stretch of a text that nothing is filled into. */
const longest = (text: string): string =>
  text.split(NAME).reduce((a, b) => (b.length > a.length ? b : a));

/** Longer words than any that stand in the middle of another one: what is written into a file is English still. */
const NAME_LENGTH = 9;

/**
 * The words of the tongue for English ones, or for a part of them, all that may stand there; English where
 * it is data.
 */
function wordsIn(pairs: readonly Pair[], words: string, isPart: boolean): string[] {
  const same = pairs.filter((pair) => pair.english.toLowerCase() === words.toLowerCase());
  if (same.length > 0)
    return [...same.map(({ other }) => other), ...(words.length < NAME_LENGTH ? [] : [words])];
  // So many loaves of a bread.
  const [, count = '', name = ''] = /^(\d+ )(.+)$/.exec(words) ?? [];
  const counted = pairs.filter((pair) => pair.english === name);
  if (counted.length > 0) return counted.map(({ other }) => count + other);
  const filled = pairs.flatMap((pair) => refilled(pairs, pair, words));
  const inside = pairs
    .filter((pair) => isPart && pair.english.toLowerCase().includes(words.toLowerCase()))
    .map(({ other }) => longest(other))
    .filter((text) => text.length > 3);
  return [...filled, ...inside, words];
}

const DAY = /\b(Sun|Mon|Tue|Wed|Thu|Fri|Sat)\b(?! [a-zà-ÿ])(?: (\d+) (Mar))?/g;
/** A Sunday in March: its first. */
const SUNDAY = Date.UTC(2026, 2, 1, 12);

/** Days are named by the clock and not by a catalogue. */
const daysIn = (tongue: OtherTongue, text: string): string =>
  text.replace(DAY, (_, name: string, day?: string) => {
    const after = 'SunMonTueWedThuFriSat'.indexOf(name) / 3;
    const at = (days: number, of: Intl.DateTimeFormatOptions): string =>
      new Date(SUNDAY + days * 86_400_000).toLocaleDateString(LOCALES[tongue], {
        ...of,
        timeZone: 'UTC',
      });
    const weekday = at(after, { weekday: 'short' });
    if (day === undefined) return weekday;
    return `${weekday} ${at(Number(day) - 1, { day: 'numeric', month: 'short' })}`;
  });

/** How a selector names what it finds by words: all of them, a part of them, or a label for ears. */
const NAMED = /(:text-is\(|:has-text\(|\[aria-label\^?=)"([^"]*)"([)\]])/g;

/** A selector that names a press by its English words, as it is found on a tablet in this tongue. */
export function selectorsIn(tongue: OtherTongue): (selector: string) => string {
  const pairs = allOf(tongue);
  const known = new Map<string, string>();
  const named = (whole: string, before: string, words: string, after: string): string => {
    const isDay = words.replace(DAY, '') === '';
    const texts = (
      isDay
        ? [words, ...wordsIn(pairs, words, false)]
        : wordsIn(pairs, words, before === ':has-text(')
    ).map((text) => daysIn(tongue, text));
    // A hyphen at which no line ends is another sign than the one that is written.
    const seen = texts.flatMap((text) => [plain(text), unbroken(plain(text))]);
    const { soften } = { de: softGerman, fr: softFrench }[tongue];
    const shown = before.startsWith(':') ? seen : [...texts, ...texts.map(soften)];
    const any = [...new Set(shown)].map((text) => `${before}${JSON.stringify(text)}${after}`);
    return any.join() === whole ? whole : `:is(${any.join(', ')})`;
  };
  return (selector) =>
    selector.replace(NAMED, (whole, ...[before, words, after]: string[]) => {
      const put = known.get(whole) ?? named(whole, before!, words!, after!);
      known.set(whole, put);
      return put;
    });
}
