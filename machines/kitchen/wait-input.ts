import type { WaitInput } from '../../src/core/day/waits.ts';
import type { Belief } from '../../src/core/readiness/belief.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { doneTasks } from '../tasks.ts';
import { fedAt, fedRecipe } from './fed.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';
import { loafMoves } from './loaf-moves.ts';
import { seenBy } from './seen-by.ts';
import { stageOf } from './stage-of.ts';

/** Everything the models may know of a bake where it stands; `prior` is what it began with. */
export const waitInput = (kitchen: Kitchen, bake: BakeSnapshot, prior: Belief): WaitInput => {
  const stage = stageOf(bake) as BakeStage;
  const { entered, touches, tasks } = bake.context;
  return {
    stage,
    now: entered[stage] ?? kitchen.now,
    recipe: fedRecipe(kitchen, bake),
    kitchen: bake.context.kitchen,
    entered,
    touches,
    prior,
    seen: seenBy(kitchen, bake),
    done: doneTasks(tasks),
    ...loafMoves(kitchen, bake),
    ...fedAt(kitchen, bake),
    again: `${stage.split('.')[0]}.look` in entered || 'proof.poke' in entered,
  };
};
