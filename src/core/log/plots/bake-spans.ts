import type { Fact } from '../../records/fact.ts';
import type { LogRecord } from '../../records/record.ts';

export type StartFact = Extract<Fact, { kind: 'start' }>;
export type CutFact = Extract<Fact, { kind: 'cut' }>;

/** Where one bake stands in its log. */
export interface BakeSpan {
  readonly start: StartFact;
  /** Its rows, from its start to the one that ended it. */
  readonly rows: readonly LogRecord[];
  /** It is over. */
  readonly over: boolean;
  /** What was last said of its cut loaf. */
  readonly cut: CutFact | null;
}

/** The bakes of a log, the latest begun first, and what a take-back withdrew in it. */
export interface Spans {
  readonly spans: readonly BakeSpan[];
  readonly withdrawn: ReadonlySet<string>;
}

/** Rows that are read at a time. */
const PIECE = 2_000;

/**
 * Finds every bake of a log in one pass, a piece of it at each step: to be gone on with when there is time,
 * for a log of years has hundreds of thousands of rows. Starts that were taken back are none.
 */
export function* bakeSpans(records: readonly LogRecord[]): Generator<null, Spans> {
  const withdrawn = new Set<string>();
  const begun = new Map<string, { readonly start: StartFact; readonly from: number }>();
  const lastIn = new Map<string, number>();
  const cuts = new Map<string, CutFact[]>();
  for (const [n, { fact, position }] of records.entries()) {
    if (n % PIECE === PIECE - 1) yield null;
    if (fact.kind === 'takeBack') withdrawn.add(fact.target);
    else if (fact.kind === 'start') begun.set(fact.id, { start: fact, from: n });
    else if (fact.kind === 'cut') cuts.set(fact.target, [...(cuts.get(fact.target) ?? []), fact]);
    for (const { start } of Object.values(position.bakes)) lastIn.set(start, n);
  }
  const spans = [...begun.values()].flatMap(({ start, from }): BakeSpan[] => {
    if (withdrawn.has(start.id)) return [];
    const last = lastIn.get(start.id) ?? from;
    return [
      {
        start,
        rows: records.slice(from, last + 2),
        over: last + 1 < records.length,
        cut: cuts.get(start.id)?.findLast(({ id }) => !withdrawn.has(id)) ?? null,
      },
    ];
  });
  return { spans: spans.toReversed(), withdrawn };
}
