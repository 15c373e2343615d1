import type { EarEngine, EarPerson } from './person.ts';
import { ANSWERS, COMMANDS, DIGITS, POKES, type EarPhrase } from './phrases.ts';

/** What is learned in one go. Digits are for readings alone: they may be left for later. */
export const ROUNDS = {
  phrases: [...COMMANDS, ...POKES, ...ANSWERS],
  digits: DIGITS,
} as const satisfies Record<string, readonly EarPhrase[]>;
export type Round = keyof typeof ROUNDS;

/** `anew`: it was said while the learned engine was not there, and that cannot tell it yet. */
export type Known = 'yes' | 'anew' | 'no';

/** Whether what somebody has said of a phrase is enough for an engine to tell it. */
export function knownOf({ sayings }: EarPerson, phrase: EarPhrase, engine: EarEngine): Known {
  const said = sayings[phrase] ?? [];
  if (said.length === 0) return 'no';
  return engine === 'learned' && said.some(({ learned }) => learned === null) ? 'anew' : 'yes';
}

/** What of a round somebody is known by, in its order. */
export const knownIn = (person: EarPerson, round: Round, engine: EarEngine): readonly EarPhrase[] =>
  ROUNDS[round].filter((phrase) => knownOf(person, phrase, engine) === 'yes');

/** The next of a round that is not known yet, behind the phrase `after` and then from the top; null: none other is left. */
export function nextToSay(
  person: EarPerson,
  round: Round,
  engine: EarEngine,
  after?: EarPhrase,
): EarPhrase | null {
  const all: readonly EarPhrase[] = ROUNDS[round];
  const from = after === undefined ? 0 : all.indexOf(after) + 1;
  const left = (phrase: EarPhrase): boolean =>
    phrase !== after && knownOf(person, phrase, engine) !== 'yes';
  return all.slice(from).find(left) ?? all.find(left) ?? null;
}
