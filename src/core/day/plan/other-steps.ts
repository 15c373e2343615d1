import type { Minutes } from '../../units.ts';
import type { Batch, Change, PlanInput, Step, Wait } from './types.ts';
import { least } from './what-if.ts';

/** A wait may be stretched past its limits by so great a share of them. Judgement. */
const STRETCH = 0.1;
/** A cold proof is never planned shorter. Judgement. */
const LEAST_RETARD: Minutes = 300;
/** A hot oven may stand empty so much longer: it costs power alone. Judgement. */
const OVEN_LONGER: Minutes = 60;

/** A change with the question it makes, and how near to the plan that was asked for it stays. */
export interface Offer {
  readonly change: Change;
  /** 1: only power or comfort … 6: another plan altogether. */
  readonly rank: number;
  readonly by: Minutes;
}

type Fits = (input: PlanInput) => boolean;

/** The question with one step of one batch changed. */
export const withStep = (
  input: PlanInput,
  b: number,
  s: number,
  change: (step: Step) => Step,
): PlanInput => ({
  ...input,
  batches: input.batches.map((batch, i) =>
    i === b
      ? { ...batch, steps: batch.steps.map((step, j) => (j === s ? change(step) : step)) }
      : batch,
  ),
});

const fives = (minutes: number): number => Math.floor(minutes / 5);

/** The least stretch of one limit of a wait that makes a plan. */
function stretched(
  most: Minutes,
  fits: (by: Minutes) => boolean,
  offer: (by: Minutes) => Offer,
): Offer[] {
  const count = least(fives(most), (n) => fits(n * 5));
  return count === null ? [] : [offer(count * 5)];
}

const longer = (wait: Wait, by: Minutes): Wait => ({ ...wait, max: wait.max + by });
const shorter = (wait: Wait, by: Minutes): Wait => ({ ...wait, min: wait.min - by });

/** Whether the dough decides a step's wait: a bulk with its folds, a proof before the oven, a retard. */
const isDough = (step: Step): boolean =>
  (step.during ?? []).length > 0 || step.beforeNext !== undefined;
const isRetard = (step: Step): boolean => (step.uses?.fridge ?? 0) > 0 && step.uses?.oven !== 1;

/** The dough's waits and the hot oven, a little past their limits. What bakes or cools never is. */
export function stretches(input: PlanInput, fits: Fits): Offer[] {
  return input.batches.flatMap((batch, b) =>
    batch.steps.flatMap((step, s): Offer[] => {
      const offers: Offer[] = [];
      const { wait, beforeNext } = step;
      const tell =
        (change: 'longer' | 'shorter', rank: number, name = step.name) =>
        (by: Minutes) => ({
          change: { change, batch: batch.name, wait: name, by },
          rank,
          by,
        });
      if (beforeNext) {
        const hot = (by: Minutes): boolean =>
          fits(
            withStep(input, b, s, (one) => ({
              ...one,
              beforeNext: { ...beforeNext, max: beforeNext.max + by },
            })),
          );
        offers.push(...stretched(OVEN_LONGER, hot, tell('longer', 1, beforeNext.name)));
      }
      if ('choices' in wait || !isDough(step)) return offers;
      const long = (by: Minutes): boolean =>
        fits(withStep(input, b, s, (one) => ({ ...one, wait: longer(wait, by) })));
      const short = (by: Minutes): boolean =>
        fits(withStep(input, b, s, (one) => ({ ...one, wait: shorter(wait, by) })));
      const down = isRetard(step) ? wait.min - LEAST_RETARD : wait.min * STRETCH;
      offers.push(...stretched(wait.max * STRETCH, long, tell('longer', 5)));
      offers.push(...stretched(Math.max(0, down), short, tell('shorter', 5)));
      return offers;
    }),
  );
}

const LOAD = /^(?:load|lid lift|vent|unload) (\d+)$/;
const loadOf = (step: Step): number => Number(LOAD.exec(step.name)?.[1] ?? 0);

/** A batch with only its first loads; what was left of its last unload's wait cools the bread. */
export function withLoads(batch: Batch, loads: number): Batch {
  const last = batch.steps.at(-1)!;
  const steps = batch.steps.filter((step) => loadOf(step) <= loads);
  const end = steps.at(-1)!;
  const { uses: _, ...unload } = end;
  const names = new Set(
    steps.flatMap((step) => [step.name, ...(step.during ?? []).map(({ name }) => name)]),
  );
  const kept = <T>(record: Record<string, T> = {}): Record<string, T> =>
    Object.fromEntries(
      Object.entries(record).filter(([name]) => names.has(name) || !LOAD.test(name)),
    );
  return {
    ...batch,
    fixed: kept(batch.fixed),
    stayPut: kept(batch.stayPut),
    steps: [...steps.slice(0, -1), { ...unload, wait: last.wait }],
  };
}

/** Fewer loads (one more pot, fewer loaves), a fold left out, an oven that goes on by its timer. */
export function fewerTouches(input: PlanInput, fits: Fits): Offer[] {
  return input.batches.flatMap((batch, b) => {
    const offers: Offer[] = [];
    const most = Math.max(0, ...batch.steps.map(loadOf));
    for (let loads = most - 1; loads >= 1; loads -= 1) {
      const some = { ...input, batches: input.batches.with(b, withLoads(batch, loads)) };
      if (!fits(some)) continue;
      offers.push({ change: { change: 'fewerLoads', batch: batch.name, loads }, rank: 4, by: 0 });
      break;
    }
    batch.steps.forEach((step, s) => {
      const drop = (touch: string, rank: number, change: (one: Step) => Step): void => {
        if (batch.fixed?.[touch] !== undefined) return;
        const { [touch]: _, ...stayPut } = batch.stayPut ?? {};
        const without = withStep(input, b, s, change);
        const batches = without.batches.with(b, { ...without.batches[b]!, stayPut });
        if (!fits({ ...without, batches })) return;
        offers.push({ change: { change: 'dropTouch', batch: batch.name, touch }, rank, by: 0 });
      };
      for (const side of step.during ?? [])
        drop(side.name, 4, (one) => ({
          ...one,
          during: (one.during ?? []).filter((other) => other !== side),
        }));
      const { beforeNext } = step;
      if (beforeNext && beforeNext.hands > 0 && input.kitchen.ovenTimer !== false)
        drop(beforeNext.name, 2, (one) => ({ ...one, beforeNext: { ...beforeNext, hands: 0 } }));
    });
    return offers;
  });
}
