import { OPENING_BELIEF, type Belief } from './belief.ts';

/** How a starter's ln v may go from bake to bake: what two bakes, the ith and the jth, have in common. */
export interface Way {
  /** Share of the belief before anything was baked. */
  readonly share: number;
  /** Covariance of ln v beside what flour and the day make of it. */
  readonly common: (i: number, j: number) => number;
}

/**
 * Sd of what a flour makes of ln v, and of what is a day's own and comes to no other: a thermometer held
 * elsewhere, a warm corner. Judgement.
 */
const SD = { flour: 0.15, day: 0.05 } as const;

/** How far starters differ before one was baked with: what flour leaves of the opening belief's variance. */
const FIRST = OPENING_BELIEF.sd ** 2 - SD.flour ** 2;

/** It walks freely: nobody's usual speed draws it back. `step`: sd from bake to bake. */
const walks = (step: number): Way['common'] => {
  return (i, j) => FIRST + step ** 2 * Math.min(i, j);
};

/**
 * It has a usual speed and stands `sd` about it; so much of that `stays` until the next bake, 0 to 1. What
 * it moves by itself is not between starters: the usual one has what is left.
 */
const stands = (sd: number, stays: number): Way['common'] => {
  const usual = Math.max(0, FIRST - sd ** 2);
  return (i, j) => usual + sd ** 2 * stays ** Math.abs(i - j);
};

/**
 * A third each: it walks, it is drawn back to its usual speed, it is another at every bake; with small,
 * middling and large steps of each. Judgement: coarse on purpose, the past bakes choose among them.
 */
export const WAYS: readonly Way[] = [
  ...[0.05, 0.1, 0.2].map((step) => ({ share: 1 / 9, common: walks(step) })),
  ...[0.15, 0.25].map((sd) => ({ share: 1 / 6, common: stands(sd, 0.9) })),
  ...[0.1, 0.2, 0.3].map((sd) => ({ share: 1 / 9, common: stands(sd, 0) })),
];

/** What `way` makes of the bake behind the past ones, and the log of how well it foretold those. */
function foretoldBy(
  { common, share }: Way,
  past: readonly Belief[],
  like: (i: number, j: number) => number,
): Belief & { readonly log: number } {
  /** The covariance's lower root, row by row, and the past bakes' misses in its units. */
  const root: number[][] = [];
  const missed: number[] = [];
  let log = Math.log(share);
  for (let i = 0; ; i += 1) {
    const row: number[] = [];
    for (let j = 0; j < i; j += 1) {
      const above = root[j]!;
      let rest = common(i, j) + SD.flour ** 2 * like(i, j);
      for (let k = 0; k < j; k += 1) rest -= row[k]! * above[k]!;
      row.push(rest / above[j]!);
    }
    const known = row.reduce((sum, one) => sum + one ** 2, 0);
    const variance = common(i, i) + SD.flour ** 2 + SD.day ** 2 - known;
    const mean = row.reduce((sum, one, k) => sum + one * missed[k]!, OPENING_BELIEF.mean);
    const told = past[i];
    if (told === undefined) return { mean, sd: Math.sqrt(variance), log };
    const sd = Math.sqrt(variance + told.sd ** 2);
    const off = (told.mean - mean) / sd;
    log -= Math.log(sd) + off ** 2 / 2;
    root.push([...row, sd]);
    missed.push(off);
  }
}

/**
 * What past bakes foretell of ln v at the next one: every way's own forecast, weighed by how well that
 * way foretold each past bake from those before it (Bayesian model averaging; each way a Gaussian
 * process, exact). `past`: what each bake told by itself, oldest first. `like(i, j)`: how far two bakes'
 * flours are alike, 0 to 1, a positive definite kernel; the next bake comes behind the last.
 */
export function foretold(past: readonly Belief[], like: (i: number, j: number) => number): Belief {
  const each = WAYS.map((way) => foretoldBy(way, past, like));
  const most = Math.max(...each.map(({ log }) => log));
  const weights = each.map(({ log }) => Math.exp(log - most));
  const all = weights.reduce((sum, one) => sum + one, 0);
  const average = (of: (one: Belief) => number): number =>
    each.reduce((sum, one, k) => sum + weights[k]! * of(one), 0) / all;
  const mean = average((one) => one.mean);
  return { mean, sd: Math.sqrt(average((one) => one.sd ** 2 + (one.mean - mean) ** 2)) };
}
