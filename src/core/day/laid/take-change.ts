import { MINUTE, type Instant } from '../../units.ts';
import { withLoads, withStep } from '../plan/other-steps.ts';
import type { Change, PlanInput, Span, Step } from '../plan/types.ts';
import type { DayAsk } from './day-plan.ts';

/** A window that gives at the end that is named; where both are, only its end gives. */
function bent(
  span: Span,
  { name, from, to, endEarlierBy, startLaterBy }: Extract<Change, { change: 'blocked' }>,
): Span {
  if ((span.name ?? '') !== name || span.from !== from || span.to !== to) return span;
  if (endEarlierBy !== null) return { ...span, to: Math.max(from, to - endEarlierBy * MINUTE) };
  return { ...span, from: Math.min(to, from + (startLaterBy ?? 0) * MINUTE) };
}

/** One step with a wait's limit moved; by the name of the step, or of the touch before the next one. */
function stretched(
  step: Step,
  { change, wait: name, by }: Extract<Change, { change: 'longer' | 'shorter' }>,
): Step {
  const { wait, beforeNext } = step;
  if (beforeNext?.name === name)
    return { ...step, beforeNext: { ...beforeNext, max: beforeNext.max + by } };
  if (step.name !== name || 'choices' in wait) return step;
  const moved = change === 'longer' ? { max: wait.max + by } : { min: Math.max(0, wait.min - by) };
  return { ...step, wait: { ...wait, ...moved } };
}

/** One step without a touch inside its wait; an oven that goes on by its timer needs no hands. */
function without(step: Step, touch: string): Step {
  const { during, beforeNext } = step;
  if (beforeNext?.name === touch) return { ...step, beforeNext: { ...beforeNext, hands: 0 } };
  return during ? { ...step, during: during.filter(({ name }) => name !== touch) } : step;
}

/** A change to the steps of one batch. */
function inSteps(input: PlanInput, batch: string, change: (step: Step) => Step): PlanInput {
  const b = input.batches.findIndex(({ name }) => name === batch);
  const steps = input.batches[b]?.steps ?? [];
  return steps.reduce((next, _, s) => withStep(next, b, s, change), input);
}

/**
 * A question with one change taken that would do. What it names and is not there changes nothing: a
 * week or a recipe may be another by now.
 */
export function withChange(input: PlanInput, change: Change): PlanInput {
  switch (change.change) {
    case 'blocked':
      return { ...input, blocked: input.blocked.map((span) => bent(span, change)) };
    case 'due':
      return {
        ...input,
        batches: input.batches.map((batch) =>
          batch.name === change.batch && batch.due !== null
            ? { ...batch, due: batch.due + change.laterBy * MINUTE }
            : batch,
        ),
      };
    case 'start':
      return {
        ...input,
        batches: input.batches.map((batch) =>
          batch.name === change.batch && batch.startAt !== undefined
            ? { ...batch, startAt: batch.startAt + change.laterBy * MINUTE }
            : batch,
        ),
      };
    case 'longer':
    case 'shorter':
      return inSteps(input, change.batch, (step) => stretched(step, change));
    case 'fewerLoads':
      return {
        ...input,
        batches: input.batches.map((batch) =>
          batch.name === change.batch ? withLoads(batch, change.loads) : batch,
        ),
      };
    case 'dropTouch':
      return inSteps(input, change.batch, (step) => without(step, change.touch));
    case 'unpin':
      return {
        ...input,
        batches: input.batches.map((batch) => {
          if (batch.name !== change.batch) return batch;
          const { [change.touch]: _, ...fixed } = batch.fixed ?? {};
          return { ...batch, fixed };
        }),
      };
  }
}

/** The ask with a change taken: another hour is asked for as such, a pin let go, all else kept beside it. */
export function takeChange(ask: DayAsk, change: Change): DayAsk {
  if (change.change === 'unpin')
    return {
      ...ask,
      bakes: ask.bakes.map((bake) => {
        if (bake.name !== change.batch) return bake;
        const { [change.touch]: _, ...pins } = bake.pins;
        return { ...bake, pins };
      }),
    };
  if (change.change !== 'due' && change.change !== 'start')
    return { ...ask, taken: [...(ask.taken ?? []), change] };
  const by = change.laterBy * MINUTE;
  const later = (at: Instant | null): Instant | null => (at === null ? null : at + by);
  return {
    ...ask,
    bakes: ask.bakes.map((bake) => {
      if (bake.name !== change.batch) return bake;
      return change.change === 'due'
        ? { ...bake, due: later(bake.due) }
        : { ...bake, startAt: later(bake.startAt) };
    }),
  };
}
