import type { Fact, Reading } from '../records/fact.ts';
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

type Correct = Extract<Fact, { kind: 'correct' }>;

/** The corrections among facts that stand, in their order, by the reading they change. */
export function correctionsIn(standing: readonly Fact[]): ReadonlyMap<string, readonly Correct[]> {
  const found = new Map<string, Correct[]>();
  for (const fact of standing) {
    if (fact.kind !== 'correct') continue;
    found.set(fact.target, [...(found.get(fact.target) ?? []), fact]);
  }
  return found;
}

/** One reading with what was made of it. */
export function takenReading(
  { id, at, by, reading: first }: Extract<Fact, { kind: 'reading' }>,
  corrections: readonly Correct[] = [],
): TakenReading {
  const said = [first, ...corrections.map(({ reading }) => reading)];
  const reading = said.at(-1)!;
  const was = corrections.map((one, n) => ({ reading: said[n]!, until: one.at }));
  return { id, at, by, reading, odd: reading.odd === true, was };
}

/** The readings of a bake that no take-back withdrew, in the order they were taken. */
export function bakeReadings({
  start,
  standing,
}: Pick<BakeRows, 'start' | 'standing'>): readonly TakenReading[] {
  const corrections = correctionsIn(standing);
  return standing.flatMap((fact) =>
    fact.kind === 'reading' && fact.bake === start.bake
      ? [takenReading(fact, corrections.get(fact.id))]
      : [],
  );
}
