import type { Formula } from '../formula/formula.ts';
import { OPENING_BELIEF, type Belief } from './belief.ts';

/** Written with the belief a bake begins from. */
export const CARRY_MODEL = 'carry-1';

/** A starter changes between two bakes by this much of ln v, and is never known worse than `most`. Judgement. */
const DRIFT_SD = 0.1;
const MOST_SD = 0.25;
/** Points of flour that may change before it counts as another flour, % of all flour. Judgement. */
const SAME_FLOUR = 10;

/** A bake of the past, by what the starter fed on and what was believed of it in the end. */
export interface PastBelief {
  /** Null where only the starter itself has shown something yet. */
  readonly formula: Formula | null;
  readonly belief: Belief;
}

const shares = ({ flours }: Formula): Map<string, number> => {
  const sum = new Map<string, number>();
  for (const { grain, pct } of flours) sum.set(grain, (sum.get(grain) ?? 0) + pct);
  return sum;
};

/** Whether two doughs are of the same flour, give or take a tenth. */
export function sameFlour(one: Formula, other: Formula): boolean {
  const [a, b] = [shares(one), shares(other)];
  const grains = [...new Set([...a.keys(), ...b.keys()])];
  const moved = grains.reduce((sum, g) => sum + Math.abs((a.get(g) ?? 0) - (b.get(g) ?? 0)), 0);
  return moved / 2 <= SAME_FLOUR;
}

/**
 * What is believed of the starter at the start of a bake, from the last one (null: there was none):
 * its mean, its sd grown by what a starter changes in between; a change of flour opens the sd again.
 * Source: judgement.
 */
export function carriedBelief(last: PastBelief | null, formula: Formula | null): Belief {
  if (last === null) return OPENING_BELIEF;
  const { mean, sd } = last.belief;
  if (last.formula && formula && !sameFlour(last.formula, formula)) return { mean, sd: MOST_SD };
  return { mean, sd: Math.min(MOST_SD, Math.hypot(sd, DRIFT_SD)) };
}
