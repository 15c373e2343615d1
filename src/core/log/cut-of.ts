import type { Fact } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';

export type CutFact = Extract<Fact, { kind: 'cut' }>;

/**
 * What was told of a bake's cut loaf, by the id of its start: the last time it was looked at. Null: never.
 *
 * @example
 * cutOf([], 'f1') // → null
 */
export const cutOf = (records: readonly LogRecord[], start: string): CutFact | null => {
  const of = ({ fact }: LogRecord): boolean => fact.kind === 'cut' && fact.target === start;
  return (records.findLast(of)?.fact as CutFact | undefined) ?? null;
};
