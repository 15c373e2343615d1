import { MINUTE, type Minutes } from '../../units.ts';
import type { Budget } from '../plan/budget.ts';
import { dueLater, reachableLater } from '../plan/later.ts';
import type { Change, PlanInput } from '../plan/types.ts';
import { whatIf } from '../plan/what-if.ts';

/** How far on is looked for the first hour that any bread could be ready: five days. Judgement. */
const SEARCHED: Minutes = 5 * 24 * 60;
/** A bake that begins now may begin so much later, tried in such steps. Judgement. */
const START = { most: 24 * 60, step: 15 } as const;
/** Of several bakes all are tried later by such steps, so often. Judgement. */
const ALL = { step: 15, tries: 96 } as const;

/** The question of one bake alone. */
const alone = (input: PlanInput, index: number): PlanInput => ({
  ...input,
  batches: [input.batches[index]!],
});

/** Minutes by which a bake's due hour is past; what is due at none is not. */
const lateness = ({ batches, planFrom }: PlanInput, index: number): Minutes => {
  const due = batches[index]!.due ?? Infinity;
  return Math.max(0, Math.ceil((planFrom - due) / MINUTE / 5) * 5);
};

/** By how much later each bake could be ready, the others left aside: the least first. */
function hoursOf(input: PlanInput, index: number, { effort }: Budget): readonly Minutes[] {
  const late = lateness(input, index);
  const from = alone(dueLater(input, index, late), index);
  return reachableLater(from, 0, effort, SEARCHED).map((by) => by + late);
}

const later = (input: PlanInput, by: readonly Minutes[]): PlanInput =>
  by.reduce((next, minutes, index) => dueLater(next, index, minutes), input);

const changesOf = ({ batches }: PlanInput, by: readonly Minutes[]): Change[] =>
  by.flatMap((laterBy, index) =>
    laterBy > 0 ? [{ change: 'due' as const, batch: batches[index]!.name, laterBy }] : [],
  );

/** What would do that no change near the question does: each alone, or all of them together. */
export interface FirstHour {
  readonly changes: Change[];
  readonly together: Change[];
}

/**
 * The first hour in the next five days at which bread that is due could be ready, where nothing near
 * its hour would do: of one bake that is late alone, else of all that are, together.
 */
export function firstHour(input: PlanInput, budget: Budget): FirstHour {
  const none = { changes: [], together: [] };
  const { fits } = whatIf(budget);
  const hours = input.batches.map(({ due }, index) => {
    if (due === null || fits(alone(input, index))) return [0];
    return hoursOf(input, index, budget);
  });
  const least = hours.map((one) => one[0]);
  if (!least.every((by) => by !== undefined)) return none;
  const late = [...least.keys()].filter((index) => least[index]! > 0);
  if (late.length === 1) {
    const [index] = late as [number];
    const by = hours[index]!.find((minutes) => fits(dueLater(input, index, minutes)));
    if (by !== undefined) return { ...none, changes: changesOf(input, least.with(index, by)) };
  }
  const moved = late.length > 0 ? late : [...least.keys()];
  for (let n = 0; n < ALL.tries; n += 1) {
    const by = least.map((minutes, index) =>
      moved.includes(index) ? minutes + n * ALL.step : minutes,
    );
    if (fits(later(input, by))) return { ...none, together: changesOf(input, by) };
  }
  return none;
}

/** How much later a bake that begins at an hour of its own would have to begin: for each, alone. */
export function firstStart(input: PlanInput, budget: Budget): Change[] {
  const { fits } = whatIf(budget);
  return input.batches.flatMap((batch, index): Change[] => {
    const { startAt } = batch;
    if (batch.due !== null || startAt === undefined) return [];
    for (let laterBy: Minutes = START.step; laterBy <= START.most; laterBy += START.step) {
      const moved = { ...batch, startAt: startAt + laterBy * MINUTE };
      if (fits({ ...input, batches: input.batches.with(index, moved) }))
        return [{ change: 'start', batch: batch.name, laterBy }];
    }
    return [];
  });
}
