import type { Reading } from '../../src/core/records/fact.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Kitchen } from './kitchen.ts';

/** A reading that stands, as it is now. `was`: what it said before it was corrected. */
export interface StandingReading {
  readonly id: string;
  readonly at: Instant;
  readonly by: 'hand' | 'probe';
  readonly reading: Reading;
  readonly was: Reading | null;
}

/** The readings of one bake that no take-back withdrew, newest first; since the last jump, as with take-back. */
export const standingReadings = ({ standing }: Kitchen, bake: string): StandingReading[] =>
  standing
    .flatMap((fact) => {
      if (fact.kind !== 'reading' || fact.bake !== bake) return [];
      const mended = standing.findLast(
        (other) => other.kind === 'correct' && other.target === fact.id,
      );
      const now = mended?.kind === 'correct' ? mended.reading : fact.reading;
      return {
        id: fact.id,
        at: fact.at,
        by: fact.by,
        reading: now,
        was: mended === undefined ? null : fact.reading,
      };
    })
    .toReversed();

/** What each reading that was corrected says now, by its fact: one pass, where a whole log is gone through. */
export const mendedIn = ({ standing }: Kitchen): ReadonlyMap<string, Reading> =>
  new Map(
    standing.flatMap((fact) =>
      fact.kind === 'correct' ? [[fact.target, fact.reading] as const] : [],
    ),
  );
