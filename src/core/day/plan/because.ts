import type { PlanInput } from './types.ts';
import { withoutPlanFrom, withWindows, type WhatIf } from './what-if.ts';

/** Stands for the start of planning among the windows. */
const PLAN_FROM = -1;

/**
 * Names of a smallest set of blocked windows, and `planFrom`, that already leave no plan: leaving out
 * any of them would. Dough, due hour and equipment stand. Empty where nothing blocked is to blame.
 * Source: QuickXplain (Junker 2004, AAAI), from memory.
 */
export function becauseOf(input: PlanInput, ask: WhatIf): string[] {
  // What stays undecided counts as a plan: the set may then be larger than need be, never too small.
  const has = (kept: readonly number[]): boolean => {
    const some = withWindows(input, kept);
    return !ask.cannotFit(kept.includes(PLAN_FROM) ? some : withoutPlanFrom(some));
  };
  /** The part of `rest` that, with `kept`, leaves no plan; `isNew`: something was just added to `kept`. */
  const explain = (kept: number[], rest: number[], isNew: boolean): number[] => {
    if (isNew && !has(kept)) return [];
    if (rest.length === 1) return rest;
    const middle = Math.floor(rest.length / 2);
    const [first, second] = [rest.slice(0, middle), rest.slice(middle)];
    const ofSecond = explain([...kept, ...first], second, first.length > 0);
    const ofFirst = explain([...kept, ...ofSecond], first, ofSecond.length > 0);
    return [...ofFirst, ...ofSecond];
  };
  if (!has([])) return [];
  const all = [PLAN_FROM, ...input.blocked.keys()];
  return explain([], all, false)
    .sort((a, b) => a - b)
    .map((i) => (i === PLAN_FROM ? 'planFrom' : (input.blocked[i]!.name ?? '')));
}
