import { positionOf } from '../../machines/kitchen/position.ts';
import type { AskWorld } from '../core/day/laid/ask-world.ts';
import type { House } from './house.ts';

/** What a question to the planner depends on besides what is asked, as it is now. */
export function askWorldOf({
  now,
  wall,
  zone,
  equipment,
}: Pick<House, 'now' | 'wall' | 'zone' | 'equipment'>): AskWorld {
  const at = now();
  const held = equipment();
  return { now: at, zone: zone(), ahead: at - wall(at), week: held.week, equipment: held };
}

/** The same with the bakes that run: what the planner is asked in, aside from the page. */
export function runningWorldOf(
  house: Pick<House, 'now' | 'wall' | 'zone' | 'equipment' | 'kitchen'>,
): AskWorld {
  const kitchen = house.kitchen();
  const { bakes, oven, lanes } = positionOf(kitchen);
  return {
    ...askWorldOf(house),
    running: {
      places: { bakes, oven, lanes },
      bakes: Object.entries(kitchen.bakes).map(([bake, { context }]) => ({
        bake,
        recipe: context.recipe,
        loaves: context.loaves,
      })),
    },
  };
}
