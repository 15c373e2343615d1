import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { coreTarget } from '../../core/oven/core-target.ts';
import type { Facts } from '../../core/speech/facts.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import type { Task } from '../../core/records/task.ts';
import { counterOf } from './counter-of.ts';
import { potSaid } from '../pot-of.ts';
import { nextLoad } from './next-load.ts';
import { countedOf } from './loaf-of.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** The facts the sentences of a stage, or of a task of its wait, may name. `hour` turns a kitchen instant into 'HH:MM'. */
export const factsOf = (
  kitchen: Kitchen,
  focus: Focus,
  hour: (at: Instant) => string,
  equipment: Equipment,
  task: Task | null = null,
): Facts & { readonly name: string } => {
  const { recipe, touches, loaves } = focus.bake.context;
  const deadline = deadlineOf(focus.machine);
  const counter = counterOf(focus.bake.context);
  return {
    ...(deadline === null
      ? counter === null
        ? {}
        : { minutes: counter }
      : {
          time: hour(deadline),
          minutes: Math.max(0, Math.round((deadline - kitchen.now) / MINUTE)),
        }),
    grams: recipe.piece,
    loaves: task === 'fetch' ? nextLoad(kitchen, equipment).length : loaves.length,
    keepBack: recipe.keepBack,
    touch: Math.min(touches + 1, recipe.process.touches.length),
    touches: recipe.process.touches.length,
    name: showBread(recipe.formula.name),
    crumbHeat: coreTarget(equipment.height ?? 0).least,
    pot: potSaid(kitchen, focus.who),
    ...countedOf(kitchen, focus, equipment),
  };
};
