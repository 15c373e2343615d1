import type { Belief } from '../readiness/belief.ts';
import type { Instant } from '../units.ts';
import type { BakeRows } from './bake-rows.ts';

/** What was believed of the starter's vigour from an instant on; 1 is the model's own speed. */
export interface BelievedAt {
  readonly at: Instant;
  readonly likely: number;
  /** Four of five starters of this belief lie between these: from its 10 % to its 90 %. */
  readonly low: number;
  readonly high: number;
}

/** What was believed in the course of a bake, and until when it was said. */
export interface BakeBeliefs {
  readonly changes: readonly BelievedAt[];
  readonly until: Instant;
}

/** The 90 % point of a standard normal. */
const Z90 = 1.2816;

const spanOf = ({ mean, sd }: Belief): Omit<BelievedAt, 'at'> => ({
  likely: Math.exp(mean),
  low: Math.exp(mean - Z90 * sd),
  high: Math.exp(mean + Z90 * sd),
});

/**
 * What the facts of a bake said was believed of its starter, each time that changed: read off their results,
 * no model runs. ln v is told as a normal there, so its middle is the median and the band ends at its 10 %
 * and 90 %. Null where nothing was said.
 */
export function bakeBeliefs({
  start,
  standing,
}: Pick<BakeRows, 'start' | 'standing'>): BakeBeliefs | null {
  const said = standing.flatMap(({ at, results }) => {
    const belief = results?.findLast(({ who, belief }) => who === start.bake && belief)?.belief;
    return belief === undefined ? [] : [{ at, belief }];
  });
  const changes = said.filter(({ belief }, n) => {
    const before = said[n - 1]?.belief;
    return before?.mean !== belief.mean || before.sd !== belief.sd;
  });
  if (said.length === 0) return null;
  return {
    changes: changes.map(({ at, belief }) => ({ at, ...spanOf(belief) })),
    until: said.at(-1)!.at,
  };
}
