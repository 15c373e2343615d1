import { remember } from './twins.ts';

/**
 * The tongue of this tablet. Words are written in English, each catalogue in a file of `words/`; the
 * other tongues have the same files with the same names (`fr/`, `de/`). What is read of a catalogue is
 * read in the tongue that stands at that moment, so nothing that is read may be kept outside of a
 * function: `tests/lint/words-read.test.ts` holds that.
 */
export const TONGUES = ['en', 'fr', 'de'] as const;
export type Tongue = (typeof TONGUES)[number];

/** Catalogues of one tongue: the exports of each file of `words/`, by its name. */
export type Catalogues = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** A catalogue's shape in another tongue: the same keys, other words. */
export type InTongue<W> = W extends string
  ? string
  : W extends (...given: never) => unknown
    ? W
    : W extends object
      ? { readonly [K in keyof W]: InTongue<W[K]> }
      : W;

interface Spoken {
  readonly tongue: Tongue;
  readonly catalogues: Catalogues;
}
const ENGLISH: Spoken = { tongue: 'en', catalogues: {} };

/** Like the locale that `Intl` reads: one for all of the program, set before anything is shown. */
let spoken: Spoken = ENGLISH;

export const tongue = (): Tongue => spoken.tongue;

/** From now on words are read in this tongue. English needs no catalogues. */
export function speakIn(tongue: Tongue, catalogues: Catalogues = {}): void {
  spoken = tongue === 'en' ? ENGLISH : { tongue, catalogues };
}

/** What is made where English stands, whatever stands here. */
export function inEnglish<T>(make: () => T): T {
  const stood = spoken;
  spoken = ENGLISH;
  try {
    return make();
  } finally {
    spoken = stood;
  }
}

/**
 * Words that are made of several: in the tongue that stands, and it is noted what they are in English.
 * `make` is called once for each.
 */
export function twinned<T extends string | null>(make: () => T): T {
  const words = make();
  if (spoken.tongue === 'en' || words === null) return words;
  const english = inEnglish(make);
  if (english !== null) remember(words, english);
  return words;
}

type Part = Readonly<Record<string, unknown>>;

/** The same part in the tongue that stands; null where it is English, or has none. */
type There = () => Part | null;

const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null;

/** A view on English words: what is read of it comes in the tongue that stands. */
function viewOf<W extends object>(english: W, there: There): W {
  const inner = new Map<string | symbol, object>();
  return new Proxy(english, {
    get(target, key) {
      const own = Reflect.get(target, key) as unknown;
      if (typeof key === 'symbol' || !Object.hasOwn(target, key)) return own;
      if (isPart(own)) {
        const known = inner.get(key);
        if (known) return known;
        const view = viewOf(own, () => {
          const part = there()?.[key];
          return isPart(part) ? part : null;
        });
        inner.set(key, view);
        return view;
      }
      const other = there()?.[key];
      if (typeof own !== typeof other) return own;
      if (typeof other === 'string') remember(other, own as string);
      return other;
    },
  });
}

/**
 * Words of a catalogue, to be read in whichever tongue stands.
 *
 * @param file name of the file in `words/`, without its ending
 * @param name what it is exported as
 */
export const inTongue = <const W extends object>(file: string, name: string, english: W): W =>
  viewOf(english, () => {
    const part = spoken.catalogues[file]?.[name];
    return isPart(part) ? part : null;
  });
