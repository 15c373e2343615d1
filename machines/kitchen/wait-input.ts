import type { WaitInput } from '../../src/core/day/waits.ts';
import type { Belief } from '../../src/core/readiness/belief.ts';
import { speaksOfRise, type Seen } from '../../src/core/records/seen.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { asksRise } from '../../src/core/records/task.ts';
import type { Instant } from '../../src/core/units.ts';
import { doneTasks } from '../tasks.ts';
import { plannedOven } from './day-plan.ts';
import { fedAt, fedRecipe } from './fed.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { loafMoves } from './loaf-moves.ts';
import { seenBy } from './seen-by.ts';
import { stageOf } from './stage-of.ts';

/**
 * Tasks that are done, and asks for the rise that called and were answered since: a share of a time that
 * has moved on would ask the same again.
 */
const doneOf = ({ tasks }: BakeSnapshot['context'], seen: readonly Seen[]): string[] => {
  const answered = (called: Instant | null | undefined): boolean =>
    seen.some((one) => speaksOfRise(one) && one.at >= (called ?? Infinity));
  const asks = Object.keys(tasks).filter((task) => asksRise(task) && answered(tasks[task]?.called));
  return [...new Set([...doneTasks(tasks), ...asks])];
};

/** Everything the models may know of a bake where it stands; `prior` is what it began with. */
export const waitInput = (kitchen: Kitchen, bake: BakeSnapshot, prior: Belief): WaitInput => {
  const stage = stageOf(bake) as BakeStage;
  const { entered, touches } = bake.context;
  const seen = seenBy(kitchen, bake);
  return {
    stage,
    now: entered[stage] ?? kitchen.now,
    recipe: fedRecipe(kitchen, bake),
    kitchen: bake.context.kitchen,
    entered,
    touches,
    prior,
    seen,
    done: doneOf(bake.context, seen),
    ...loafMoves(kitchen, bake),
    ...fedAt(kitchen, bake),
    ...plannedOven(kitchen, bake),
    again: `${stage.split('.')[0]}.look` in entered || 'proof.poke' in entered,
  };
};
