import { betterPlans, plan } from '../plan.ts';
import { MINUTE, type Minutes } from '../../units.ts';
import { dueLater, reachableLater } from '../plan/later.ts';
import type { PlanInput, PlanOptions, PlanResult } from '../plan/types.ts';

/** How far on is looked for the first hour that any bread could be ready: five days. Judgement. */
const SEARCHED: Minutes = 5 * 24 * 60;
/** Hours that are tried of several bakes, each of which has them alone. Judgement. */
const TRIED = 24;

/**
 * The question with a bake that is due in the past due now: a day can be told by how much later it is,
 * wherever it was asked.
 */
const lateness = (input: PlanInput, index: number): Minutes => {
  const { due } = input.batches[index]!;
  return due === null ? 0 : Math.max(0, Math.ceil((input.planFrom - due) / MINUTE / 5) * 5);
};

/** The first hour, days away or not, at which one bake could be ready; null where it is due at none. */
function firstLater(input: PlanInput, index: number): Minutes | null {
  if (input.batches[index]!.due === null) return null;
  const late = lateness(input, index);
  const from = dueLater(input, index, late);
  const hours = reachableLater(from, index, { steps: 0 }, SEARCHED);
  const fits = (by: Minutes): boolean =>
    plan(dueLater(from, index, by), { why: false, limitMs: 500 }).fits === true;
  const found = input.batches.length === 1 ? hours[0] : spread(hours, TRIED).find((by) => fits(by));
  return found === undefined ? null : found + late;
}

/** At most so many of a list, its first always among them. */
function spread<T>(all: readonly T[], most: number): readonly T[] {
  const step = Math.max(1, Math.ceil(all.length / most));
  return all.filter((_, i) => i % step === 0);
}

/** Where nothing near would do: the first hour at which the bread could be ready, bake by bake. */
function withFirstHour(input: PlanInput, result: PlanResult): PlanResult {
  if (result.fits !== false || result.changes.length > 0) return result;
  const changes = input.batches.flatMap(({ name }, index) => {
    const laterBy = firstLater(input, index);
    return laterBy === null || laterBy === 0
      ? []
      : [{ change: 'due' as const, batch: name, laterBy }];
  });
  return { ...result, changes };
}

/**
 * The plans of a question as `betterPlans` tells them, and where nothing fits nor one near change would
 * do, the first hour in the next days at which it would.
 */
export function* lay(input: PlanInput, options: PlanOptions = {}): Generator<PlanResult, void> {
  for (const result of betterPlans(input, options)) yield withFirstHour(input, result);
}
