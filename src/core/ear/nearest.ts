import type { EarEngine, EarPerson, Saying } from './person.ts';
import { DIGITS, EAR_PHRASES, type EarPhrase } from './phrases.ts';
import { warpDistance } from './warp.ts';

/** How far a saying is from a phrase as somebody says it; `near` is 1 where it is just near enough. */
export interface Near {
  readonly phrase: EarPhrase;
  readonly person: string;
  readonly near: number;
}

/**
 * Distances that are still the same phrase, by engine, and how much one of what the net learned counts beside
 * one of the sound's shape: as both are spread. Found on made voices, so that some one in a hundred pieces of
 * ordinary speech is taken for a phrase: `npx tsx tests/bench/ear/tune.ts`.
 */
const MOST: Readonly<Record<EarEngine, number>> = { plain: 3.6, learned: 3.9 };
const LEARNED_COUNTS = 4.2;

/** Nothing changes in it: silence, or no sound at all. */
const isFlat = ({ data }: { readonly data: Float32Array }): boolean =>
  data.every((value) => value === 0);

/** By the learned engine only where all that this person said was heard by it: its distances are of their own. */
const engineOf = ({ sayings }: EarPerson, saying: Saying, engine: EarEngine): EarEngine => {
  const all = [saying, ...Object.values(sayings).flat()];
  return engine === 'learned' && all.every(({ learned }) => learned !== null) ? engine : 'plain';
};

function distance(a: Saying, b: Saying, engine: EarEngine): number {
  const plain = a.plain.size === b.plain.size ? warpDistance(a.plain, b.plain) : Infinity;
  if (engine === 'plain' || !a.learned || !b.learned) return plain;
  if (a.learned.size !== b.learned.size) return Infinity;
  return (plain + LEARNED_COUNTS * warpDistance(a.learned, b.learned)) / 2;
}

/**
 * What else it may have been. A digit is told from all digits, whether it may come now or not, and a command
 * from every command: one that is not asked for just now is no other one.
 */
function rivals(active: readonly EarPhrase[]): readonly EarPhrase[] {
  const digits: readonly EarPhrase[] = DIGITS;
  const isDigit = (phrase: EarPhrase): boolean => digits.includes(phrase);
  return active.some(isDigit)
    ? [...new Set([...digits, ...active])]
    : EAR_PHRASES.filter((phrase) => !isDigit(phrase));
}

/** Every phrase that somebody can have meant among these that are asked for, the nearest first. */
export function nearest(
  saying: Saying,
  person: EarPerson,
  active: readonly EarPhrase[],
  wanted: EarEngine,
): readonly Near[] {
  if (isFlat(saying.plain)) return [];
  const engine = engineOf(person, saying, wanted);
  const found: Near[] = [];
  for (const phrase of rivals(active)) {
    const far = (person.sayings[phrase] ?? []).map((take) => distance(saying, take, engine));
    const near = Math.min(...far.filter(Number.isFinite)) / MOST[engine];
    if (Number.isFinite(near)) found.push({ phrase, person: person.id, near });
  }
  return found.sort((a, b) => a.near - b.near);
}
