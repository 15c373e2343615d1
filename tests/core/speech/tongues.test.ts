import { afterEach, describe, expect, test } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { wants } from '../../../src/core/speech/fill.ts';
import { sayHeat, showDial, showHeat } from '../../../src/core/speech/heats.ts';
import { showLength } from '../../../src/core/speech/lengths.ts';
import { showMoney } from '../../../src/core/speech/money.ts';
import { sayNumber } from '../../../src/core/speech/numbers.ts';
import { shown } from '../../../src/core/speech/facts.ts';
import { showDay } from '../../../src/core/speech/show-day.ts';
import { sayTime } from '../../../src/core/speech/times.ts';
import { speakIn, type Catalogues } from '../../../src/core/speech/tongue.ts';
import { englishOf } from '../../../src/core/speech/twins.ts';
import { showWeight } from '../../../src/core/speech/weights.ts';
import { isSame } from './support/same-words.ts';

/**
 * Every catalogue in English, by its file and its name. Read of the modules themselves: where test files share
 * their modules those were made long ago. What others are made of, in capitals, is no catalogue.
 */
const catalogues = import.meta.glob<Readonly<Record<string, unknown>>>(
  '../../../src/core/speech/words/*.ts',
  { eager: true },
);
/** Files that only gather catalogues of others. */
const GATHER = ['bake-words', 'questions'];
const made = Object.entries(catalogues).flatMap(([path, words]) =>
  Object.entries(words)
    .filter(([name, value]) => name !== name.toUpperCase() && typeof value === 'object')
    .map(([name, english]) => ({ file: /([\w-]+)\.ts$/.exec(path)![1]!, name, english })),
);

afterEach(() => speakIn('en'));

interface Pair {
  readonly where: string;
  readonly english: string;
  readonly other: unknown;
}
/** Each English text beside what stands in its place. */
const pairs = (english: unknown, other: unknown, where: string): readonly Pair[] =>
  typeof english === 'string'
    ? [{ where, english, other }]
    : typeof english === 'object' && english !== null
      ? Object.entries(english).flatMap(([key, value]) =>
          pairs(value, (other as Record<string, unknown> | undefined)?.[key], `${where}.${key}`),
        )
      : [];
/** What the record keeps, and what a list is asked by: no words. */
const isKey = (where: string): boolean =>
  /\.(slab|tiles\.\d+|notes\.\d+)\.value$|\.item$/.test(where);

/** English words that no other tongue here has. */
const LEAKS = /(?<![\p{L}’'])(the|and|your|with|then|of)(?![\p{L}])/iu;

describe.each([
  ['de', de],
  ['fr', fr],
] as const)('the words of %s', (_, words: Catalogues) => {
  const files = [...new Set(made.map(({ file }) => file))];
  const told = made.filter(({ file }) => file in words);
  const all = told.flatMap(({ file, name, english }) =>
    pairs(english, words[file]?.[name], `${file}.${name}`),
  );
  const texts = all.filter(({ where }) => !isKey(where));

  test('are there for every file', () => {
    expect(files.length).toBeGreaterThan(80);
    expect(files.filter((file) => !(file in words) && !GATHER.includes(file))).toEqual([]);
  });

  test('stand at every place of the English, none of them empty', () => {
    expect(all.length).toBeGreaterThan(500);
    const missing = all.filter(({ other }) => typeof other !== 'string' || other.trim() === '');
    expect(missing.map(({ where }) => where)).toEqual([]);
  });

  test('have no place that the English has not', () => {
    const keys = (value: unknown, where: string): readonly string[] =>
      typeof value === 'object' && value !== null
        ? Object.entries(value).flatMap(([key, one]) => keys(one, `${where}.${key}`))
        : // What is done to words is none of them.
          value === null || typeof value === 'function'
          ? []
          : [where];
    const known = new Set(all.map(({ where }) => where));
    const others = told.flatMap(({ file, name, english }) =>
      // A list of words may be longer or shorter in another tongue where it is looked through.
      Array.isArray(english) ? [] : keys(words[file]?.[name], `${file}.${name}`),
    );
    expect(others.filter((where) => !known.has(where) && !/\.\d+$/.test(where))).toEqual([]);
  });

  test('want the same names to be filled', () => {
    const wrong = texts.filter(
      ({ english, other }) =>
        wants(english).toSorted().join() !== wants(String(other)).toSorted().join(),
    );
    expect(wrong.map(({ where, other }) => `${where}: ${String(other)}`)).toEqual([]);
  });

  test('leave what the record keeps as it is', () => {
    for (const { where, english, other } of all.filter((one) => isKey(one.where)))
      expect(other, where).toBe(english);
  });

  test('are no English, but where a word is the same in both', () => {
    const same = texts.filter(
      ({ where, english, other }) =>
        other === english && /\p{L}{2}/u.test(english.replace(/\{\w+\}/g, '')) && !isSame(where),
    );
    expect(same.map(({ where, english }) => `${where}: ${english}`)).toEqual([]);
    const leaks = texts.filter(
      ({ where, other }) => LEAKS.test(String(other).replace(/\{\w+\}/g, '')) && !isSame(where),
    );
    expect(leaks.map(({ where, other }) => `${where}: ${String(other)}`)).toEqual([]);
  });

  test('are as short as their place: a headline nine words, a slab thirty letters', () => {
    for (const { where, other } of texts) {
      const text = String(other);
      if (where.endsWith('.headline'))
        expect(
          text.split(/\s+/).filter((w) => /[\p{L}\p{N}{]/u.test(w)).length,
          `${where}: ${text}`,
        ).toBeLessThanOrEqual(9);
      if (/\.slab(\.label)?$/.test(where))
        expect(text.length, `${where}: ${text}`).toBeLessThanOrEqual(30);
    }
  });
});

const METRIC = { heat: 'C', weight: 'g' } as const;

test('German writes and says numbers as Germans do, and knows what they are in English', () => {
  speakIn('de', de);
  expect(showHeat(24.5, METRIC)).toBe('24,5 °C');
  expect(showWeight(935.5, METRIC)).toBe('935,5 g');
  expect(showDial(230, METRIC, 250)).toBe('230 bis 250 °C');
  expect(showLength(6 * 1440)).toBe('6\u00a0Tage');
  expect(showDay('2031-05-03')).toBe('Sa 3. Mai');
  expect(showMoney(3.5, 'EUR')).toBe('3,50\u00a0€');
  expect(shown({ loaves: 2 })).toEqual({ loaves: '2 Laibe' });
  for (const [said, english] of [
    [sayNumber(24.5, 'degree'), 'twenty-four point five degrees'],
    [sayNumber(18, 'gram'), 'eighteen, one eight, grams'],
    [sayTime('13:40'), 'thirteen forty'],
    [sayHeat(-4, METRIC), 'minus four degrees'],
  ] as const)
    expect(englishOf(said), said).toBe(english);
  expect(sayNumber(24.5, 'degree')).toBe('24,5 Grad');
  expect(sayNumber(18, 'gram')).toBe('18, 1 8, Gramm');
  expect(sayTime('13:40')).toBe('13:40 Uhr');
  expect(sayHeat(-4, METRIC)).toBe('minus 4 Grad');
});

test('French does too', () => {
  speakIn('fr', fr);
  expect(showHeat(24.5, METRIC)).toBe('24,5 °C');
  expect(showDial(230, METRIC, 250)).toBe('230 à 250 °C');
  expect(showLength(6 * 1440)).toBe('6\u00a0jours');
  expect(showDay('2031-05-03')).toBe('sam. 3 mai');
  expect(sayNumber(1.5, 'hour')).toBe('1,5 heure');
  expect(sayNumber(30, 'minute')).toBe('30, 3 0, minutes');
  expect(englishOf(sayNumber(30, 'minute'))).toBe('thirty, three zero, minutes');
});

test('English writes and says what it did', () => {
  expect(showHeat(24.5, METRIC)).toBe('24.5 °C');
  expect(showDay('2031-05-03')).toBe('Sat 3 May');
  expect(sayNumber(18, 'gram')).toBe('eighteen, one eight, grams');
});
