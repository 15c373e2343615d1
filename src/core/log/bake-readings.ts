import type { Reading } from '../records/fact.ts';
import type { Instant } from '../units.ts';
import type { BakeRows } from './bake-rows.ts';

/** A reading as it stands now. */
export interface TakenReading {
  /** Its fact's id. */
  readonly id: string;
  readonly at: Instant;
  readonly by: 'hand' | 'probe';
  readonly reading: Reading;
  /** It lies outside what is usual, was asked again, and was kept. */
  readonly odd: boolean;
  /** What it said before, the oldest first, each until it was corrected; none: it never was. */
  readonly was: readonly { readonly reading: Reading; readonly until: Instant }[];
}

/** The readings of a bake that no take-back withdrew, in the order they were taken. */
export const bakeReadings = ({
  start,
  standing,
}: Pick<BakeRows, 'start' | 'standing'>): readonly TakenReading[] =>
  standing.flatMap((fact): TakenReading[] => {
    if (fact.kind !== 'reading' || fact.bake !== start.bake) return [];
    const { id, at, by } = fact;
    const mended = standing.flatMap((one) =>
      one.kind === 'correct' && one.target === id ? [one] : [],
    );
    const said = [fact.reading, ...mended.map(({ reading }) => reading)];
    const reading = said.at(-1)!;
    const was = mended.map((one, n) => ({ reading: said[n]!, until: one.at }));
    return [{ id, at, by, reading, odd: reading.odd === true, was }];
  });
