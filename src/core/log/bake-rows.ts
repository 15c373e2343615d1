import type { Fact } from '../records/fact.ts';
import type { Position } from '../records/position.ts';
import type { LogRecord } from '../records/record.ts';

type Start = Extract<Fact, { kind: 'start' }>;

/** The part of a log that one bake runs through. */
export interface BakeRows {
  readonly start: Start;
  /** From its start to the row that ended it, or to the log's end; those taken back too. */
  readonly rows: readonly LogRecord[];
  /** The facts of these rows that no take-back withdrew. */
  readonly standing: readonly Fact[];
  /** Where the kitchen stands now, of a bake that runs; null: only its rows are known. */
  readonly live: Position | null;
  /** The row that ended it; null while it runs. */
  readonly end: LogRecord | null;
}

/** What a reader of many bakes has at hand, and what the clock has brought since the last fact. */
export interface Beside {
  /** The ids of facts of this log that a take-back withdrew. */
  readonly withdrawn?: ReadonlySet<string>;
  /** Where the kitchen stands now. */
  readonly live?: Position;
  /** The id of the start fact that is meant; left out: the bake's last that stands. */
  readonly begun?: string;
}

/** The ids of facts that a take-back withdrew. */
export const withdrawnIn = (records: readonly LogRecord[]): ReadonlySet<string> =>
  new Set(records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])));

/**
 * The rows of one bake, by its last start that stands or the one that is meant; null where the log has none.
 *
 * @example
 * bakeRows([], 'cherry') // → null
 */
export function bakeRows(
  records: readonly LogRecord[],
  bake: string,
  { withdrawn = withdrawnIn(records), live, begun }: Beside = {},
): BakeRows | null {
  const from = records.findLastIndex(
    ({ fact }) =>
      fact.kind === 'start' &&
      fact.bake === bake &&
      !withdrawn.has(fact.id) &&
      (begun === undefined || fact.id === begun),
  );
  const start = records[from]?.fact;
  if (start?.kind !== 'start') return null;
  const isIn = ({ position }: LogRecord): boolean => position.bakes[bake]?.start === start.id;
  // Between a last press and its taking back it was over for a while: only the end of the log tells.
  const last = records.findLastIndex((row, i) => i >= from && isIn(row));
  const end = records[last + 1] ?? null;
  const rows = records.slice(from, last + (end === null ? 1 : 2));
  return {
    start,
    rows,
    standing: rows.flatMap(({ fact }) => (withdrawn.has(fact.id) ? [] : [fact])),
    live: (end === null && live) || null,
    end,
  };
}
