import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { pots } from '../../core/speech/en/names.ts';
import type { Facts } from '../../core/speech/facts.ts';
import { counterOf } from './counter-of.ts';
import { loadSize } from '../load-size.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';

/** Which load of how many the oven is at, counted in loaves of the bake on show. */
const loadOf = (
  kitchen: Kitchen,
  { bake }: Focus,
  equipment: Equipment,
): { load: number; loads: number } => {
  const { out } = kitchen.oven.context;
  const perLoad = loadSize(equipment, bake.context.recipe.process.vessel);
  const { loaves } = bake.context;
  const done = loaves.filter((loaf) => out.includes(loaf)).length;
  const loads = Math.ceil(loaves.length / perLoad);
  return { load: Math.min(loads, Math.floor(done / perLoad) + 1), loads };
};

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
    pot: pots.one,
    ...loadOf(kitchen, focus, equipment),
  };
};
