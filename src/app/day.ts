import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { isPast } from '../core/day/laid/is-past.ts';
import type { Deed } from '../core/records/fact.ts';
import type { Instant } from '../core/units.ts';
import type { House } from '../screens/house.ts';
import type { World } from './world.ts';

/** What a house has of the day: the plan that stands, and what planning takes once it is asked for. */
export function makeDay(
  world: Pick<World, 'planner' | 'zone'>,
  kitchen: () => Kitchen,
  now: () => Instant,
  take: (deed: Deed) => Promise<void>,
): Pick<House, 'plan' | 'beginPlanned' | 'planner' | 'zone'> {
  let planner: ReturnType<House['planner']> | undefined;
  const plan = () => {
    const laid = kitchen().plan;
    return laid && !isPast(laid, now()) ? laid : null;
  };
  return {
    plan,
    beginPlanned: async (name) =>
      (await import('./begin-planned.ts')).beginPlanned(name, plan(), kitchen, take),
    planner: () => (planner ??= world.planner()),
    zone: world.zone,
  };
}
