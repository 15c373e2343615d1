import type { Belief } from './belief.ts';

/** How a starter's speed is told: against the usual one, by so large a part of it. */
export interface Vigour {
  readonly pace: 'usual' | 'slower' | 'faster';
  /** How far from the usual; null at the usual pace. */
  readonly part: Part | null;
  /** Of the usual speed, %, to the next five, and where it lies four times in five. */
  readonly percent: number;
  readonly least: number;
  readonly most: number;
  /** Whether it is known well enough to say more than that it is a guess. */
  readonly known: boolean;
}

/** Parts a baker says, and up to which distance from the usual speed each is the nearest. */
const PARTS = [
  ['tenth', 0.15],
  ['fifth', 0.225],
  ['quarter', 0.29],
  ['third', 0.415],
  ['half', Infinity],
] as const;
export type Part = (typeof PARTS)[number][0];

/** Nearer than this nobody can tell two starters apart. Judgement. */
const SAME = 0.05;
/** The sd from which on a speed is a guess: a starter never baked with opens above it. Judgement. */
const GUESS = 0.2;
/** Four fifths of a normal distribution lie within so many sd. */
const FOUR_FIFTHS = 1.2816;

const percentOf = (lnV: number): number => 5 * Math.round(20 * Math.exp(lnV));

/**
 * A belief of vigour as a baker says it. 80 % is "a fifth slower", with its doubt beside it: no
 * number of a living thing is told more finely than to five.
 *
 * @example
 * vigourOf({ mean: Math.log(0.8), sd: 0.1 }).part // → 'fifth'
 */
export function vigourOf({ mean, sd }: Belief): Vigour {
  const off = Math.exp(mean) - 1;
  const usual = Math.abs(off) < SAME;
  return {
    pace: usual ? 'usual' : off < 0 ? 'slower' : 'faster',
    part: usual ? null : PARTS.find(([, upTo]) => Math.abs(off) < upTo)![0],
    percent: percentOf(mean),
    least: percentOf(mean - FOUR_FIFTHS * sd),
    most: percentOf(mean + FOUR_FIFTHS * sd),
    known: sd < GUESS,
  };
}
