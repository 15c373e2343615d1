import { decide } from '../../../src/core/ear/decide.ts';
import type { EarEngine, EarPerson } from '../../../src/core/ear/person.ts';
import { DIGITS, EAR_PHRASES, type EarPhrase } from '../../../src/core/ear/phrases.ts';
import { OVER, type Over } from './corpus.ts';
import type { Asked, Listened } from './heard-by.ts';
import { SETS } from './texts.ts';

/** So many of so many. */
export interface Share {
  readonly of: number;
  readonly found: number;
}
const NONE: Share = { of: 0, found: 0 };
const more = ({ of, found }: Share, isFound: boolean): Share => ({
  of: of + 1,
  found: found + (isFound ? 1 : 0),
});
export const percent = ({ of, found }: Share): number => (of === 0 ? NaN : (100 * found) / of);

export interface Score {
  /** A phrase that was asked for was said: taken, and for no other, by how far it was over its kitchen. */
  readonly right: Readonly<Record<Over, Share>>;
  /** It was taken for another one that was asked for. */
  readonly wrong: Share;
  /** Ordinary speech was said: it was taken for a phrase that was asked for. */
  readonly false: Share;
  /** Something one sound away from a phrase was said: it was taken for a phrase that was asked for. */
  readonly alike: Share;
  /** One of all eleven digits was said. */
  readonly digits: Readonly<Record<Over, Share>>;
  /** Said, then taken for: every command among all of them, every digit among all digits. */
  readonly taken: ReadonlyMap<string, number>;
}

const isDigit = (phrase: EarPhrase): boolean => (DIGITS as readonly EarPhrase[]).includes(phrase);
const ALL_COMMANDS = EAR_PHRASES.filter((phrase) => !isDigit(phrase));
export const key = (said: EarPhrase, heard: EarPhrase | null): string => `${said} ${heard ?? '-'}`;

/** The first phrase that was made of all that was cut out of it. */
function heardOf(
  { made }: Asked,
  person: EarPerson,
  active: readonly EarPhrase[],
  engine: EarEngine,
): EarPhrase | null {
  for (const { cut, saying } of made) {
    const { room, long } = cut;
    const asked = { saying, room, long, people: [person], active, engine, last: null };
    const { phrase } = decide(asked);
    if (phrase !== null) return phrase;
  }
  return null;
}

const perOver = (): Record<Over, Share> => ({ 30: NONE, 20: NONE, 10: NONE });

/** How one engine tells what these voices say, each by itself. */
export function scored(all: readonly Listened[], engine: EarEngine): Score {
  const right = perOver();
  const digits = perOver();
  const taken = new Map<string, number>();
  let wrong = NONE;
  let mistaken = NONE;
  let alike = NONE;
  for (const { person, phrases, speech, alike: twins } of all) {
    for (const asked of phrases) {
      const phrase = asked.phrase!;
      const hear = (active: readonly EarPhrase[]) => heardOf(asked, person, active, engine);
      for (const active of SETS.filter((set) => set.includes(phrase))) {
        const heard = hear(active);
        right[asked.over] = more(right[asked.over], heard === phrase);
        wrong = more(wrong, heard !== null && heard !== phrase);
      }
      const amongAll = hear(isDigit(phrase) ? DIGITS : ALL_COMMANDS);
      if (isDigit(phrase)) digits[asked.over] = more(digits[asked.over], amongAll === phrase);
      taken.set(key(phrase, amongAll), (taken.get(key(phrase, amongAll)) ?? 0) + 1);
    }
    for (const asked of speech)
      for (const active of SETS)
        mistaken = more(mistaken, heardOf(asked, person, active, engine) !== null);
    for (const asked of twins)
      alike = more(alike, heardOf(asked, person, SETS[0]!, engine) !== null);
  }
  return { right, wrong, false: mistaken, alike, digits, taken };
}

export const overs = (shares: Readonly<Record<Over, Share>>): string =>
  OVER.map((over) => percent(shares[over]).toFixed(0)).join(' / ');
