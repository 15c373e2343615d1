import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { coreTarget } from '../../core/oven/core-target.ts';
import type { Facts } from '../../core/speech/facts.ts';
import { counterOf } from './counter-of.ts';
import { potSaid } from '../pot-of.ts';
import { countedOf } from './loaf-of.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** The facts a stage's sentences may name. `hour` turns a kitchen instant into 'HH:MM'. */
export const factsOf = (
  kitchen: Kitchen,
  focus: Focus,
  hour: (at: Instant) => string,
  equipment: Equipment,
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
    loaves: loaves.length,
    keepBack: recipe.keepBack,
    touch: Math.min(touches + 1, recipe.process.touches.length),
    touches: recipe.process.touches.length,
    name: recipe.formula.name,
    crumbHeat: coreTarget(equipment.height ?? 0).least,
    pot: potSaid(kitchen, focus.who),
    ...countedOf(kitchen, focus, equipment),
  };
};
