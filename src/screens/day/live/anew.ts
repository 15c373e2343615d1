import { withChange } from '../../../core/day/laid/take-change.ts';
import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import { liveInput, type LiveInput } from '../../../core/day/laid/live-input.ts';
import { laidAgain, movesOf, whyMoved, type Move, type Why } from '../../../core/day/laid/moved.ts';
import { asItStands, isWorthMoving } from '../../../core/day/laid/still-stands.ts';
import type { Change, PlannedTouch } from '../../../core/day/plan/types.ts';
import type { AskedHours } from '../../../core/speech/tell-plan.ts';
import { MINUTE } from '../../../core/units.ts';
import type { House } from '../../house.ts';
import { layOnce, liveDayOf } from './live-day.ts';

/** What the day comes to, asked anew: nothing moves, something does, nothing fits, or no answer yet. */
export type Anew =
  | { readonly is: 'over' | 'asPlanned' | 'undecided' }
  | {
      readonly is: 'moved';
      readonly moves: readonly Move[];
      readonly whys: readonly Why[];
      readonly next: DayPlan;
      /** Told from other answers: an offer that was declined is not made again. */
      readonly sign: string;
    }
  | {
      readonly is: 'nothing';
      /** The hours that nothing fitted for. */
      readonly asked: readonly AskedHours[];
      readonly changes: readonly Change[];
      readonly because: readonly string[];
    };

const signOf = (moves: readonly Move[]): string =>
  moves.map(({ batch, name, to }) => `${batch}/${name}@${to}`).join(' ');

/** The plan that stands, asked anew in the kitchen as it is. */
export async function askAnew(house: House, plan: DayPlan): Promise<Anew> {
  const day = liveDayOf(house, plan);
  if (day === null) return { is: 'undecided' };
  const live = liveInput(day);
  if (live.input.batches.length === 0) return { is: 'over' };
  const result = await layOnce(house, live.input);
  if (result.fits === null) return { is: 'undecided' };
  if (!result.fits) {
    const { changes, because } = result;
    return { is: 'nothing', asked: live.input.batches, changes, because };
  }
  const moves = movesOf(plan, live, result);
  if (moves.length === 0) return { is: 'asPlanned' };
  const whys = whyMoved(plan, live, day.now);
  const still = asItStands(plan, live);
  const old = still && (await layOnce(house, still, false));
  if (!isWorthMoving(old, result, { moves, whys })) return { is: 'asPlanned' };
  return { is: 'moved', moves, whys, next: laidAgain(plan, live, result), sign: signOf(moves) };
}

/**
 * The plan with a change that would do; null where it does not any more. A change of the wait that runs
 * is made in what the bench knows of it, any other in what was asked.
 */
export async function takeChange(
  house: House,
  plan: DayPlan,
  change: Change,
): Promise<DayPlan | null> {
  const ask = { ...plan.ask, taken: [...(plan.ask.taken ?? []), change] };
  const day = liveDayOf(house, plan, ask);
  if (day === null) return null;
  const live = liveInput(day);
  const here: LiveInput = { ...live, input: withChange(live.input, change) };
  for (const one of [live, here]) {
    const result = await layOnce(house, one.input, false);
    if (result.fits) return laidAgain(plan, one, result, ask);
  }
  return null;
}

/** Touches promised to the iron or to the baker that lie where nobody is. */
export function unattended(house: House, plan: DayPlan): PlannedTouch[] {
  const day = liveDayOf(house, plan);
  if (day === null) return [];
  const { input, done } = liveInput(day);
  return input.batches.flatMap(({ name: batch, steps, fixed = {} }) =>
    steps.flatMap(({ name, hands }): PlannedTouch[] => {
      const at = fixed[name];
      if (at === undefined || hands === 0 || done[batch]?.includes(name)) return [];
      const isOut = input.blocked.some(({ from, to }) => at < to && at + hands * MINUTE > from);
      const touch = plan.touches.find((one) => one.batch === batch && one.name === name);
      return isOut && touch ? [{ ...touch, at }] : [];
    }),
  );
}
