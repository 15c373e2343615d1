import type { Heard } from './heard.ts';
import type { EarEngine, EarPerson, Saying } from './person.ts';
import type { EarPhrase } from './phrases.ts';
import { warpDistance } from './warp.ts';

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

/** What was said, by whom; never a phrase that is not active. */
export function decide({ saying, long, people, active }: ToDecide): Heard {
  if (long) return { phrase: null, why: 'long' };
  let found: { phrase: EarPhrase; person: string; far: number } | null = null;
  for (const person of people) {
    for (const [phrase, takes] of Object.entries(person.sayings)) {
      for (const take of takes) {
        const far = warpDistance(saying.plain, take.plain);
        if (far < (found?.far ?? Infinity))
          found = { phrase: phrase as EarPhrase, person: person.id, far };
      }
    }
  }
  if (!found || !active.includes(found.phrase) || found.far > 3)
    return { phrase: null, why: 'other' };
  return { phrase: found.phrase, person: found.person };
}
