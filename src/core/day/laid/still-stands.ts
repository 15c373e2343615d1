import type { PlanInput, PlanResult } from '../plan/types.ts';
import { MINUTE, type Minutes } from '../../units.ts';
import type { DayPlan } from './day-plan.ts';
import type { LiveInput } from './live-input.ts';
import type { Fitting, Move, Why } from './moved.ts';

/** Points a fresh plan is better by, or minutes by which something is not as planned. Judgement. */
const WORTH = { points: 1, minutes: 30 } as const;
/** Nobody is asked to move by less. Judgement. */
const LEAST: Minutes = 10;

/**
 * The question with every touch to come where the plan has it: what it costs as it stands. Null where
 * one of them is over and was not done, or lies where no hands are: then it does not stand.
 */
export function asItStands(plan: DayPlan, { input, done }: LiveInput): PlanInput | null {
  const { now = input.planFrom, blocked } = input;
  const batches = input.batches.map((batch) => {
    const fixed = { ...batch.fixed };
    for (const touch of plan.touches) {
      const isMine = touch.batch === batch.name && !done[batch.name]?.includes(touch.name);
      if (!isMine || touch.name in fixed) continue;
      fixed[touch.name] = touch.at;
    }
    return { ...batch, fixed, stayPut: {} };
  });
  const stands = plan.touches.every(({ batch, name, at, hands }) => {
    const own = input.batches.find((one) => one.name === batch);
    if (own === undefined || done[batch]?.includes(name) || name in (own.fixed ?? {})) return true;
    const isOut = blocked.some(({ from, to }) => at < to && at + hands * MINUTE > from);
    return at >= now && !(hands > 0 && isOut);
  });
  return stands ? { ...input, batches } : null;
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
