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
