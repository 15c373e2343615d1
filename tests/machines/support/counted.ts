import { MACHINES, type Machines } from '../../../machines/kitchen/kitchen.ts';

/**
 * The machines with every guard counted: work measured without a clock. `asked` grows with each
 * guard that is asked; the answers are the machines' own.
 */
export const countedMachines = (): { machines: Machines; asked: () => number } => {
  let asked = 0;
  const counted = <G extends object>(guards: G): G =>
    Object.fromEntries(
      Object.entries(guards).map(([name, guard]) => [
        name,
        (...args: readonly unknown[]) => {
          asked += 1;
          return (guard as (...args: readonly unknown[]) => boolean)(...args);
        },
      ]),
    ) as G;
  const { bake, oven, lane, attention } = MACHINES;
  return {
    machines: {
      bake: bake.provide({ guards: counted(bake.implementations.guards) as never }),
      oven: oven.provide({ guards: counted(oven.implementations.guards) as never }),
      lane: lane.provide({ guards: counted(lane.implementations.guards) as never }),
      attention: attention.provide({ guards: counted(attention.implementations.guards) as never }),
    },
    asked: () => asked,
  };
};
