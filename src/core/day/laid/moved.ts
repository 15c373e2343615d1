import type { PlannedTouch, PlanResult } from '../plan/types.ts';
import { MINUTE, type Instant, type Minutes } from '../../units.ts';
import type { DayPlan } from './day-plan.ts';
import type { LiveInput } from './live-input.ts';

export type Fitting = Extract<PlanResult, { fits: true }>;

/** A touch that stands elsewhere than it did. `from` null: it is new, such as an oven that is not hot anyway. */
export interface Move {
  readonly batch: string;
  readonly name: string;
  readonly from: Instant | null;
  readonly to: Instant;
}

/**
 * Why a plan is not what it was. `wait`: what the bench knows of a wait now, against when the plan had it
 * end (`by` < 0: sooner); `done`: a touch was later or sooner than planned; `overdue`: one has not been
 * done. `touch` is the one before the wait, or itself.
 */
export interface Why {
  readonly why: 'wait' | 'done' | 'overdue';
  readonly batch: string;
  readonly touch: string;
  readonly by: Minutes;
}

/** Less is the grid's rounding and nobody's news. Judgement. */
const NEWS: Minutes = 10;

const isDone = (done: LiveInput['done'], { batch, name }: PlannedTouch): boolean =>
  done[batch]?.includes(name) ?? false;

/** The touches of a fresh plan that are still to come: without the markers. */
export const touchesAhead = ({ done }: LiveInput, { touches }: Fitting): PlannedTouch[] =>
  touches.filter((touch) => !isDone(done, touch));

/**
 * A plan as it stands once a fresh one is accepted: what is done with stays as it stood, the rest is the
 * fresh one's. `ask` where more was asked than before.
 */
export function laidAgain(
  plan: DayPlan,
  live: LiveInput,
  result: Fitting,
  ask: DayPlan['ask'] = plan.ask,
): DayPlan {
  const past = plan.touches
    .filter((touch) => isDone(live.done, touch))
    .map((touch) => ({ ...touch, frozen: true }));
  const fresh = new Set(result.ready.map(({ batch }) => batch));
  return {
    id: plan.id,
    sequence: plan.sequence + 1,
    ask,
    touches: [...past, ...touchesAhead(live, result)].toSorted((a, b) => a.at - b.at),
    ready: [...plan.ready.filter(({ batch }) => !fresh.has(batch)), ...result.ready],
  };
}

/** What stands elsewhere in a fresh plan, the next first; bread that is ready at another hour as `ready`. */
export function movesOf(plan: DayPlan, live: LiveInput, result: Fitting): Move[] {
  const touches = touchesAhead(live, result).flatMap(({ batch, name, at }): Move[] => {
    const was = plan.touches.find((one) => one.batch === batch && one.name === name);
    return was?.at === at ? [] : [{ batch, name, from: was?.at ?? null, to: at }];
  });
  const ready = result.ready.flatMap(({ batch, at }): Move[] => {
    const was = plan.ready.find((one) => one.batch === batch);
    return was === undefined || was.at === at
      ? []
      : [{ batch, name: 'ready', from: was.at, to: at }];
  });
  return [...touches, ...ready];
}

/** The touch a batch comes to next, its main ones alone: those that a wait leads to. */
function nextMain(plan: DayPlan, { input, done }: LiveInput, batch: string): PlannedTouch | null {
  const steps = input.batches.find(({ name }) => name === batch)?.steps ?? [];
  const next = steps.find(({ name }) => !done[batch]?.includes(name));
  const found = plan.touches.find((one) => one.batch === batch && one.name === next?.name);
  return found ?? null;
}

/** Everything of ten minutes and more that is not as it was planned, what it moves most first. */
export function whyMoved(plan: DayPlan, live: LiveInput, now: Instant): Why[] {
  const whys = live.input.batches.flatMap(({ name: batch }): Why[] => {
    const at = live.at[batch];
    const next = nextMain(plan, live, batch);
    const overdue: Why[] =
      next && next.at + next.hands * MINUTE < now
        ? [{ why: 'overdue', batch, touch: next.name, by: (now - next.at) / MINUTE }]
        : [];
    if (at === undefined) return overdue;
    const likely = at.marks['likely'];
    if (likely !== undefined && next && at.touch !== 'to fridge') {
      const by = (likely - next.at) / MINUTE;
      return [...overdue, { why: 'wait', batch, touch: at.touch, by }];
    }
    const was = plan.touches.find((one) => one.batch === batch && one.name === at.touch);
    if (was === undefined || at.is === 'over') return overdue;
    const ended = at.is === 'hands' ? was.at : was.at + was.hands * MINUTE;
    return [...overdue, { why: 'done', batch, touch: at.touch, by: (at.since - ended) / MINUTE }];
  });
  return whys
    .map((why) => ({ ...why, by: Math.round(why.by / 5) * 5 }))
    .filter(({ by }) => Math.abs(by) >= NEWS)
    .toSorted((a, b) => Math.abs(b.by) - Math.abs(a.by));
}
