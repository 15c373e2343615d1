import type { Model } from './tolerances.ts';

/**
 * Where an expected value comes from. `outside`: print or measurement, its source named. `practice`,
 * `memory`, `judgement`: as marked, no source. `port`: worked out from the same equations by other
 * hands; it tests the port and not the truth.
 */
export type Mark = 'outside' | 'practice' | 'memory' | 'judgement' | 'port';

/** One value of the trade beside ours. A pair is a range, both ends in it. */
export interface Row {
  readonly model: Model;
  readonly what: string;
  readonly ours: number;
  readonly expected: number | readonly [number, number];
  readonly mark: Mark;
  readonly source: string;
}

/** What is expected of one model, the mark and source written once. */
export const rowsOf =
  (model: Model, mark: Mark, source: string) =>
  (what: string, ours: number, expected: Row['expected'], own: Partial<Row> = {}): Row => ({
    model,
    what,
    ours,
    expected,
    mark,
    source,
    ...own,
  });
