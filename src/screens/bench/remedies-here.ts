import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Remedy } from '../../core/log/remedies.ts';
import { remediesAt } from '../../core/log/remedy-stages.ts';
import type { House } from '../house.ts';

/** The remedies that belong where this bench stands; [] where there are none. */
export const remediesHere = (house: House, bake: string): readonly (readonly Remedy[])[] => {
  const { bakes, lanes, oven } = house.kitchen();
  const its = bakes[bake];
  const loaves = its?.context.loaves;
  return remediesAt({
    bake: its ? stageOf(its) : null,
    oven: stageOf(oven),
    lanes: Object.values(lanes).flatMap((lane) =>
      (loaves ?? lane.context.loaves).some((loaf) => lane.context.loaves.includes(loaf))
        ? [stageOf(lane)]
        : [],
    ),
  });
};
