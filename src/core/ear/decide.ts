import type { Heard } from './heard.ts';
import { nearest, type Near } from './nearest.ts';
import type { EarEngine, EarPerson, Saying } from './person.ts';
import type { EarPhrase } from './phrases.ts';

/** A saying, and among whom and what it is to be told. `last`: who spoke last; null: nobody did. */
export interface ToDecide {
  readonly saying: Saying;
  /** How loud the room is, dB of full. */
  readonly room: number;
  readonly long: boolean;
  readonly people: readonly EarPerson[];
  readonly active: readonly EarPhrase[];
  readonly engine: EarEngine;
  readonly last: string | null;
}

/** The nearest phrase has to be nearer than any other by so much. */
const CLEARLY = 0.03;
/** A little further than this it may still have been meant: that is asked again, not passed over. */
const NEARLY = 1.1;
/** A room so loud is at fault where nothing was understood, dB of full: about as loud as who speaks. Judgement. */
const LOUD_DB = -28;

const not = (why: 'unclear' | 'other' | 'long' | 'loud'): Heard => ({ phrase: null, why });

/** What these, the nearest first, make of it. */
function among(found: readonly Near[], active: readonly EarPhrase[]): Heard {
  const [best] = found;
  if (!best || best.near > NEARLY || !active.includes(best.phrase)) return not('other');
  const rival = found.find(({ phrase }) => phrase !== best.phrase);
  if (best.near > 1 || (rival && rival.near - best.near < CLEARLY)) return not('unclear');
  return { phrase: best.phrase, person: best.person };
}

/**
 * What was said, by whom; never a phrase that is not active. Whoever spoke last is tried first and, where
 * they are understood, alone: it is mostly they who go on.
 */
export function decide({ saying, room, long, people, active, engine, last }: ToDecide): Heard {
  if (long) return not('long');
  const of = (some: readonly EarPerson[]): readonly Near[] =>
    some.flatMap((person) => nearest(saying, person, active, engine));
  const first = of(people.filter(({ id }) => id === last));
  const theirs = among(first, active);
  if (theirs.phrase !== null) return theirs;
  const others = of(people.filter(({ id }) => id !== last));
  const heard = among(
    [...first, ...others].sort((a, b) => a.near - b.near),
    active,
  );
  return heard.phrase === null && room > LOUD_DB ? not('loud') : heard;
}
