import { describe, expect, it } from 'vitest';
import { fr } from '../../../src/core/speech/fr.ts';
import { wants } from '../../../src/core/speech/fill.ts';

const english = import.meta.glob<Record<string, unknown>>('../../../src/core/speech/words/*.ts', {
  eager: true,
});
const fileOf = (path: string): string => /([\w-]+)\.ts$/.exec(path)![1]!;

interface Pair {
  readonly at: string;
  readonly english: string;
  readonly french: unknown;
}

/** Every text of an export beside the one in its place in French. */
function pairs(at: string, own: unknown, other: unknown): Pair[] {
  if (typeof own === 'string') return [{ at, english: own, french: other }];
  if (typeof own !== 'object' || own === null) return [];
  return Object.entries(own).flatMap(([key, value]) =>
    pairs(`${at}.${key}`, value, (other as Record<string, unknown> | undefined)?.[key]),
  );
}

/** A module has besides its catalogues constants that others are made of: in capitals. */
const isCatalogue = (name: string): boolean => name !== name.toUpperCase();
const all = Object.entries(english).flatMap(([path, words]) => {
  const file = fileOf(path);
  return Object.entries(words)
    .filter(([name, value]) => isCatalogue(name) && typeof value === 'object')
    .flatMap(([name, value]) => pairs(`${file}.${name}`, value, fr[file]?.[name]));
});
const where = (is: (pair: Pair) => boolean): string[] => all.filter(is).map(({ at }) => at);
const french = ({ french: text }: Pair): string => String(text);

describe('the French catalogue', () => {
  it('has every text of the English one', () => {
    expect(all.length).toBeGreaterThan(4000);
    expect(where((pair) => typeof pair.french !== 'string' || pair.french === '')).toEqual([]);
  });

  it('wants the same names in each text', () => {
    const names = (text: string): string => [...wants(text)].sort().join();
    expect(where((pair) => names(pair.english) !== names(french(pair)))).toEqual([]);
  });

  it('keeps what the log keeps', () => {
    const kept = /\.tiles\.\d+\.value$|\.slab\.value$|\.notes\.\d+\.value$|\.item$/;
    const ids = all.filter(({ at }) => kept.test(at));
    expect(ids.length).toBeGreaterThan(150);
    expect(ids.filter((pair) => pair.english !== pair.french).map(({ at }) => at)).toEqual([]);
  });

  it('sets a narrow blank before tall marks and inside quotes, and curls its apostrophes', () => {
    const wrong = /(?<!\u202f|^)[:;?!»%](?=\s|$)|«(?!\u202f)|'|\u202f\u202f/;
    expect(where((pair) => wrong.test(french(pair)))).toEqual([]);
  });

  it('has no "à" before an hour that has its day with it where that is another', () => {
    // 'Passe à dimanche' and 'jusqu’à dimanche' are said, 'prêt à dim. 03:39' is not.
    const dayed = /^(?:live\.(?!today\.said)|pots-page\.potsPage\.last$)/;
    const glued = /(?<!passe |jusqu’)(?<!\p{L})à \{time\}/iu;
    const own = all.filter(({ at }) => dayed.test(at));
    expect(own.length).toBeGreaterThan(60);
    expect(own.filter((pair) => glued.test(french(pair))).map(({ at }) => at)).toEqual([]);
  });

  it('has thrown out what is to be', () => {
    const thrown = all.filter((pair) =>
      /\bthrow (?:it|them|\w+) (?:out|away)\b/i.test(pair.english),
    );
    expect(thrown.length).toBeGreaterThan(3);
    expect(thrown.filter((pair) => !/jet/i.test(french(pair))).map(({ at }) => at)).toEqual([]);
  });

  it('cries out nowhere', () => {
    expect(where((pair) => french(pair).includes('!'))).toEqual([]);
  });

  it.each([
    ['what is hot burns', /\bhot\b/i, /br[ûu]l/i, 40],
    ['who is burned gets help', /get help/, /appelez à l’aide/, 5],
    ['nuts are more than walnuts', /\bnuts\b/i, /fruits à coque/i, 4],
  ] as const)('keeps the force of its cautions: %s', (_, of, says, least) => {
    const cautions = all.filter((pair) => /care/i.test(pair.at) && of.test(pair.english));
    expect(cautions.length).toBeGreaterThanOrEqual(least);
    expect(cautions.filter((pair) => !says.test(french(pair))).map(({ at }) => at)).toEqual([]);
  });
});
