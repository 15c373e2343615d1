import type { PlanInput, PlanResult } from '../plan/types.ts';
import { MINUTE, type Minutes } from '../../units.ts';
import type { DayPlan } from './day-plan.ts';
import { standing } from './held.ts';
import type { LiveInput } from './live-input.ts';
import type { Fitting, Move, Why } from './moved.ts';

/** Points a fresh plan is better by, or minutes by which something is not as planned. Judgement. */
const WORTH = { points: 1, minutes: 30 } as const;
/** Nobody is asked to move by less. Judgement. */
const LEAST: Minutes = 10;

/** The question with every touch to come where the plan has it: what it costs; null where one does not stand. */
export function asItStands(plan: DayPlan, live: LiveInput): PlanInput | null {
  const batches = live.input.batches.flatMap((batch) => standing(plan, live, batch) ?? []);
  return batches.length === live.input.batches.length ? { ...live.input, batches } : null;
}

/**
 * Whether a fresh plan is worth a baker's asking: the old one stands no more (`old`: what it costs as it
 * stands, null where it does not), lacks a touch, is worse by a point, or something is half an hour off.
 */
export function isWorthMoving(
  old: PlanResult | null,
  fresh: Fitting,
  { moves, whys }: { readonly moves: readonly Move[]; readonly whys: readonly Why[] },
): boolean {
  if (moves.length === 0) return false;
  if (!old?.fits || moves.some(({ from }) => from === null)) return true;
  if (moves.every(({ from, to }) => Math.abs(to - from!) < LEAST * MINUTE)) return false;
  const isOff = whys.some(({ by }) => Math.abs(by) >= WORTH.minutes);
  return isOff || old.cost - fresh.cost >= WORTH.points;
}
