import type { Instant } from '../../units.ts';
import type { MarkShape } from '../drawing.ts';

/** One value of a chart: a mark in its drawing, and a row in its table. */
export interface ChartPoint {
  readonly at: Instant;
  readonly value: number;
  /** As the table has it. */
  readonly shown: string;
  /** From where to where it may lie, as the table has it. */
  readonly between?: string;
  /** Outside what is usual: marked with a cross, and in no line. */
  readonly odd?: boolean;
}

export interface ChartSeries {
  /** On the chart, in a word or two. */
  readonly label: string;
  /** In the table. */
  readonly what: string;
  readonly shape: MarkShape;
  /** `steps`: it stands until it changes. */
  readonly line: 'plain' | 'dashed' | 'steps' | null;
  readonly points: readonly ChartPoint[];
}

/** Values of one kind on one scale. */
export interface ChartPanel {
  /** What its numbers are. */
  readonly title: string;
  readonly series: readonly ChartSeries[];
  /** A line across: what is wanted. */
  readonly level?: { readonly value: number; readonly label: string };
  /** Hatched: a doubt that stands until it changes. */
  readonly band?: {
    readonly label: string;
    readonly points: readonly {
      readonly at: Instant;
      readonly low: number;
      readonly high: number;
    }[];
    readonly until: Instant;
  };
  /** Its scale is at least this high. */
  readonly least: number;
}

/** All values of a panel that its scale must hold. */
export const valuesIn = ({ series, level, band }: ChartPanel): readonly number[] => [
  ...series.flatMap(({ points }) => points.map(({ value }) => value)),
  ...(level ? [level.value] : []),
  ...(band?.points.flatMap(({ low, high }) => [low, high]) ?? []),
];

/** The last instant at which anything stands in it; null: it is empty. */
export const lastOf = ({ series, band }: ChartPanel): Instant | null => {
  const all = series.flatMap(({ points }) => points.map(({ at }) => at));
  return all.length === 0 && !band ? null : Math.max(...all, band?.until ?? -Infinity);
};
