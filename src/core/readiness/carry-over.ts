import type { Formula, Grain } from '../formula/formula.ts';
import type { Instant } from '../units.ts';
import { OPENING_BELIEF, type Belief } from './belief.ts';
import { foretold } from './starter-ways.ts';

/** Written with the belief a bake begins from. */
export const CARRY_MODEL = 'carry-2';

/** So many bakes teach; of more, the latest. Judgement: beyond a few dozen the ways are told apart. */
export const TEACH = 40;
/** A starter that was looked at by itself changes so much of ln v until its bake, and no further. Judgement. */
const SINCE_LOOK = { sd: 0.1, most: 0.25 } as const;
/** Points of flour, % of all flour, over which two doughs become strangers. Judgement. */
const FLOUR_REACH = 15;
/** Of the certainty a bake began with, so much more is told at least: less comes of the grid's ends. Judgement. */
const LEAST = 0.01;
/** What is kept of ln v, steps in one. */
const FINE = 1e4;

/** Shares of all flour by grain, %. */
export type FlourShares = Readonly<Partial<Record<Grain, number>>>;

/** What one bake told of the starter's ln v, without what was believed as it began. */
export interface TaughtVigour extends Belief {
  /** The bake's start. */
  readonly start: string;
  /** When it last told something. */
  readonly at: Instant;
  readonly flours: FlourShares;
}

/**
 * The flours of a formula by grain.
 *
 * @example
 * floursOf({ flours: [] }) // → {}
 */
export const floursOf = ({ flours }: Pick<Formula, 'flours'>): FlourShares => {
  const sum: Partial<Record<Grain, number>> = {};
  for (const { grain, pct } of flours) sum[grain] = (sum[grain] ?? 0) + pct;
  return sum;
};

/**
 * How far two doughs are of one flour: 1 the same, .8 with ten points moved, next to nothing with forty.
 *
 * @example
 * flourLikeness({ wheat: 100 }, { wheat: 100 }) // → 1
 */
export function flourLikeness(one: FlourShares, other: FlourShares): number {
  const grains = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<Grain>;
  const squares = [...grains].reduce(
    (sum, grain) => sum + ((one[grain] ?? 0) - (other[grain] ?? 0)) ** 2,
    0,
  );
  return Math.exp(-squares / 2 / (2 * FLOUR_REACH ** 2));
}

const rounded = (number: number): number => Math.round(number * FINE) / FINE;

/**
 * What a bake told by itself: the belief it ended with, without the one it began with (both normal, so
 * the quotient is). Null where it told nothing.
 *
 * @example
 * toldBy({ mean: 0, sd: 0.3 }, { mean: 0, sd: 0.3 }) // → null
 */
export function toldBy(began: Belief, ended: Belief): Belief | null {
  const more = ended.sd ** -2 - began.sd ** -2;
  if (!(more > LEAST * began.sd ** -2)) return null;
  const mean = (ended.mean * ended.sd ** -2 - began.mean * began.sd ** -2) / more;
  return { mean: rounded(mean), sd: rounded(more ** -0.5) };
}

/**
 * What is believed of the starter as a bake begins, from what past bakes told, oldest first: how it has
 * gone from bake to bake so far tells how far the last one is to be followed. `flours`: of the bake to
 * come; null: as of the last one.
 */
export function carriedBelief(past: readonly TaughtVigour[], flours: FlourShares | null): Belief {
  const taught = past.slice(-TEACH);
  const last = taught.at(-1);
  if (last === undefined) return OPENING_BELIEF;
  const all = [...taught.map((one) => one.flours), flours ?? last.flours];
  return foretold(taught, (i, j) => flourLikeness(all[i]!, all[j]!));
}

/** What is believed of a starter that was looked at by itself since: what it showed, a little less sure. */
export const sinceLook = ({ mean, sd }: Belief): Belief => ({
  mean,
  sd: Math.min(SINCE_LOOK.most, Math.hypot(sd, SINCE_LOOK.sd)),
});
