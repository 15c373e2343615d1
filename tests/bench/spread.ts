/** Times of one kind of press, ms. */
export interface Spread {
  readonly presses: number;
  readonly p50: number;
  readonly p95: number;
  readonly worst: number;
}

/** The least of the sorted times that so great a share (0–1) of them does not pass. */
const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;

export const spreadOf = (times: readonly number[]): Spread => {
  const sorted = times.toSorted((a, b) => a - b);
  return {
    presses: sorted.length,
    p50: quantile(sorted, 0.5),
    p95: quantile(sorted, 0.95),
    worst: sorted.at(-1) ?? Number.NaN,
  };
};

/** "36 / 41 / 44 ms": half of the presses, nineteen of twenty, the slowest. */
export const showSpread = ({ p50, p95, worst }: Spread): string =>
  `${[p50, p95, worst].map((ms) => ms.toFixed(0)).join(' / ')} ms`;
