import type { PlanOptions, PlannedTouch } from '../plan/types.ts';
import { MINUTE } from '../../units.ts';
import { planAndFallback } from './came-up.ts';
import type { DayPlan } from './day-plan.ts';
import { layHeld, type Lay } from './held.ts';
import { layInput } from './lay-ask.ts';
import { liveInput, type LiveDay, type LiveInput } from './live-input.ts';
import { liveDayOf } from './live-day.ts';
import { liveLooks } from './live-looks.ts';
import {
  NOTHING_STANDS,
  type Anew,
  type LiveAnswer,
  type LiveQuestion,
  type Stands,
} from './live-question.ts';
import { missedFold } from './missed-fold.ts';
import { laidAgain, movesOf, whyMoved, type Move } from './moved.ts';
import { pinsInTheWay } from './pins.ts';
import { asItStands, isWorthMoving } from './still-stands.ts';
import { takeChange, withChange } from './take-change.ts';
import { waysOn } from './ways-on.ts';

const signOf = (moves: readonly Move[]): string =>
  moves.map(({ batch, name, to }) => `${batch}/${name}@${to}`).join(' ');

/** The last plan of a question. */
const laying =
  (options: PlanOptions): Lay =>
  (input, why) =>
    [...layInput(input, { ...options, why: why ?? true })].at(-1)!.result;

/** Touches promised to the iron or to the baker that lie where nobody is. */
const unattended = (plan: DayPlan, { input, done }: LiveInput): PlannedTouch[] =>
  input.batches.flatMap(({ name: batch, steps, fixed = {} }) =>
    steps.flatMap(({ name, hands }): PlannedTouch[] => {
      const at = fixed[name];
      if (at === undefined || hands === 0 || done[batch]?.includes(name)) return [];
      const isOut = input.blocked.some(({ from, to }) => at < to && at + hands * MINUTE > from);
      const touch = plan.touches.find((one) => one.batch === batch && one.name === name);
      return isOut && touch ? [{ ...touch, at }] : [];
    }),
  );

function standsOf(day: LiveDay, live: LiveInput): Stands {
  const { plan } = day;
  const at = Object.entries(live.at);
  return {
    alone: unattended(plan, live),
    looks: liveLooks(day, live, plan.touches),
    levain: at.find(([, { touch }]) => touch === 'feed levain')?.[0] ?? null,
    fold: missedFold(day),
  };
}

/** The plan that stands, asked anew in the kitchen as it is. */
function anew(question: LiveQuestion, lay: Lay): Anew {
  const { plan } = question;
  const day = liveDayOf(question);
  if (day === null) return { is: 'undecided', stands: NOTHING_STANDS };
  const live = liveInput(day);
  const stands = standsOf(day, live);
  if (live.input.batches.length === 0) return { is: 'over', stands };
  const whys = whyMoved(plan, live, day.now);
  const { result, gave } = layHeld(plan, live, whys, lay);
  if (result.fits === null) return { is: 'undecided', stands };
  if (!result.fits) {
    const fits = (ask: DayPlan['ask']): boolean => {
      const other = liveDayOf(question, ask);
      return other !== null && lay(liveInput(other).input, false).fits === true;
    };
    const changes = [...pinsInTheWay(plan.ask, fits), ...result.changes];
    return { is: 'nothing', asked: live.input.batches, changes, because: result.because, stands };
  }
  const moves = movesOf(plan, live, result);
  if (moves.length === 0) return { is: 'asPlanned', stands };
  const still = asItStands(plan, live);
  const old = still && lay(still, false);
  if (!isWorthMoving(old, result, { moves, whys })) return { is: 'asPlanned', stands };
  const others = gave.filter((name) => moves.some(({ batch }) => batch === name));
  const next = laidAgain(plan, live, result);
  return { is: 'moved', moves, whys, others, next, sign: signOf(moves), stands };
}

/**
 * The plan with a change that would do; null where it does not any more. A change of the wait that runs
 * is made in what the bench knows of it, any other in what was asked.
 */
function changed(question: LiveQuestion, lay: Lay): DayPlan | null {
  const { plan, asks } = question;
  if (asks.kind !== 'change') return null;
  const { change } = asks;
  const ask =
    change.change === 'unpin'
      ? takeChange(plan.ask, change)
      : { ...plan.ask, taken: [...(plan.ask.taken ?? []), change] };
  const day = liveDayOf(question, ask);
  if (day === null) return null;
  const live = liveInput(day);
  const here: LiveInput = { ...live, input: withChange(live.input, change) };
  for (const one of [live, here]) {
    const { result } = layHeld(plan, one, whyMoved(plan, one, day.now), (input) =>
      lay(input, false),
    );
    if (result.fits) return laidAgain(plan, one, result, ask);
  }
  return null;
}

/** Answers a question about a day that runs. `options.now`: a clock that runs while it is searched. */
export function layLive(question: LiveQuestion, options: PlanOptions = {}): LiveAnswer {
  const { plan, asks } = question;
  const lay = laying(options);
  switch (asks.kind) {
    case 'anew':
      return { kind: 'anew', anew: anew(question, lay) };
    case 'change':
      return { kind: 'change', plan: changed(question, lay) };
    case 'trouble': {
      const day = liveDayOf(question);
      const quick: Lay = (input) => lay(input, false);
      const ways = day
        ? planAndFallback(
            waysOn(asks.trouble, day),
            (live) => layHeld(plan, live, whyMoved(plan, live, day.now), quick).result,
          )
        : [];
      return { kind: 'trouble', ways };
    }
  }
}
