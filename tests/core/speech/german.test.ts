import { describe, expect, it } from 'vitest';
import { wants } from '../../../src/core/speech/fill.ts';
import { de } from '../../../src/core/speech/de.ts';
import { planTouches } from '../../../src/core/speech/de/plan.ts';
import { readings4 } from '../../../src/core/speech/de/small.ts';

const modules = import.meta.glob<Record<string, unknown>>('../../../src/core/speech/words/*.ts', {
  eager: true,
});
const english = new Map(
  Object.entries(modules).map(([path, words]) => [/([\w-]+)\.ts$/.exec(path)![1]!, words]),
);

/** Put together from the views of other files: they have no words of their own. */
const COMPOSED = ['bake-words', 'questions'];

interface Text {
  readonly at: string;
  readonly english: string;
  readonly german: unknown;
}

function texts(at: string, own: unknown, other: unknown): Text[] {
  if (typeof own === 'string') return [{ at, english: own, german: other }];
  if (typeof own !== 'object' || own === null) return [];
  return Object.entries(own).flatMap(([key, value]) =>
    texts(`${at}.${key}`, value, (other as Record<string, unknown> | undefined)?.[key]),
  );
}

const all = [...english]
  .filter(([file]) => !COMPOSED.includes(file))
  .flatMap(([file, words]) =>
    Object.entries(words)
      // Plain constants are what the catalogues beside them are made of.
      .filter(([name, value]) => typeof value === 'object' && name !== 'SCATTER')
      .flatMap(([name, value]) => texts(`${file}.${name}`, value, de[file]?.[name])),
  );
const german = ({ german: text }: Text): string => String(text);
const where = (is: (text: Text) => boolean): string[] => all.filter(is).map(({ at }) => at);
const names = (text: string): string => [...wants(text)].sort().join();

/** What the log, a formula or a list of the circle keeps, and finds again by its letters. */
const KEPT = /\.(slab|tiles\.\d+|notes\.\d+)\.value$|\.item$/;

/** Words that stood for the English ones and mean another thing. */
const OTHERWISE: readonly (readonly [RegExp, string])[] = [
  [/Baumnüsse/, 'walnuts alone, to the Swiss'],
  [/^Halt den Bildschirm/, 'stop it, with its "an"'],
  [/\b[Bb]ack es gleich\b/, 'bake it at once'],
  [/\bkalt backen|\b[Bb]ack ihn jetzt kalt/, 'bake it without heat'],
  [/wie gesagt/, 'as I said before'],
  [/^Genommen$/, 'taken away'],
  [/^nicht gesagt$/i, 'not said aloud'],
  [/\b[Bb]essere es/, 'patch it, as cloth is'],
  [/Finger fallen/, 'have your fingers come off'],
  [/^Plan, /, 'a plan, not to plan'],
  [/^Am Tag |^Der Tag fasst/, 'by day, not the Day'],
  [/Folge jetzt dem Ofen/, 'walk behind it'],
  [/zweimal, weit auseinander/, 'long after each other'],
  [/Frag die Packung/, 'question a box, that is read'],
];

describe('the German catalogue', () => {
  it('has every text of the English one, and no file more', () => {
    expect(all.length).toBeGreaterThan(4000);
    expect(where((text) => typeof text.german !== 'string' || text.german === '')).toEqual([]);
    const others = ['measures'];
    expect(Object.keys(de).filter((file) => !english.has(file) && !others.includes(file))).toEqual(
      [],
    );
  });

  it('wants the same names in each text', () => {
    expect(where((text) => names(text.english) !== names(german(text)))).toEqual([]);
  });

  it('leaves what is kept as it is', () => {
    const kept = all.filter(({ at }) => KEPT.test(at));
    expect(kept.length).toBeGreaterThan(150);
    expect(kept.filter((text) => text.english !== text.german).map(({ at }) => at)).toEqual([]);
  });

  it('opens quotes below and shuts them above, and cries out nowhere', () => {
    const count = (text: string, sign: string): number => text.split(sign).length - 1;
    expect(where((text) => /[!"'”‘]/.test(german(text)))).toEqual([]);
    expect(where((text) => count(german(text), '„') !== count(german(text), '“'))).toEqual([]);
  });

  it('parts long words where they may break', () => {
    expect(where((text) => /\p{L}{16}/u.test(german(text)))).toEqual([]);
  });

  it('says within what time food is to be baked or cold, not after what time', () => {
    // 'In 2 Stunden' is when two hours are over.
    const held = all.filter(({ english: text }) =>
      /within (?:\d|two) hours|in the oven in \{length\}/.test(text),
    );
    expect(held.length).toBeGreaterThan(7);
    expect(
      held.filter((text) => !/binnen (?:\d|\{)/.test(german(text))).map(({ at }) => at),
    ).toEqual([]);
  });

  it('warns of whom heat hurts: what is hot does not burn up', () => {
    // 'Töpfe verbrennen' is that the pots are on fire; steam scalds.
    expect(
      where((text) => /(?:Dampf|Einlage|Töpfe) verbrenn(?:t|en)[:.]/.test(german(text))),
    ).toEqual([]);
  });

  it.each(OTHERWISE)('has no %s: %s', (word) => {
    expect(where((text) => word.test(german(text)))).toEqual([]);
  });

  it('calls where a loaf is shut its Schluss, but to children', () => {
    const seams = all.filter(({ english: text }) => /\bseam\b/i.test(text));
    expect(seams.length).toBeGreaterThan(12);
    for (const text of seams)
      expect(german(text), text.at).toMatch(text.at.startsWith('small-') ? /Naht/ : /Schluss/);
  });

  it('shows a child the line on a jar, and asks a grown-up nothing that is not read', () => {
    expect(
      where(({ at, german: text }) => at.startsWith('small-') && /Marke/.test(String(text))),
    ).toEqual([]);
    for (const { text, answers } of Object.values(readings4))
      for (const word of Object.values(answers)) expect(text).toContain(word);
  });

  it('has no length of time where days would end otherwise', () => {
    // A hundred hours are shown and said as '5 Tage'.
    expect(where((text) => /\b(?:seit|in|in etwa) \{minutes\}/i.test(german(text)))).toEqual([]);
  });

  it('has no "um" before an hour that has its day with it where that is another', () => {
    const dayed =
      /^(?:live\.(?!today\.said)|starter\.starterWords\.(?:ripe|pastIt)$|pots-page\.potsPage\.last$)/;
    expect(
      where(({ at, german: text }) => dayed.test(at) && /\bum \{time\}/i.test(String(text))),
    ).toEqual([]);
  });

  it('counts what may be one where its number does not bend the words', () => {
    const bent = /(?:^|[.:] )\{count\} (?:aus|von dem|von \{n\} waren)|noch \{count\} Fragen/;
    expect(where((text) => bent.test(german(text)))).toEqual([]);
  });

  it('begins what is written small within a sentence with a word that may be', () => {
    // 'falten 2' is read as well as 'Falten 2'.
    const isVerb = (text: string): boolean =>
      /^(?:Kalt stellen|\p{Lu}\p{Ll}+n)(?: |,|$)/u.test(text);
    expect(Object.values(planTouches).filter((text) => !isVerb(text))).toEqual([]);
  });
});
