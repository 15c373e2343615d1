import { kitchenAt } from '../../machines/kitchen/position.ts';
import type { Kitchen, Machines } from '../../machines/kitchen/kitchen.ts';
import type { BakePlace, Position } from '../core/records/position.ts';
import type { BakeStage } from '../core/records/stage.ts';

/** Whether these machines know every stage of a position. */
export const canStandAt = (position: Position, kitchen: Kitchen, machines: Machines): boolean => {
  try {
    kitchenAt(position, kitchen.starts, machines);
    return true;
  } catch {
    return false;
  }
};

const OVEN_OFF: Position['oven'] = {
  stage: 'off',
  marks: {},
  entered: {},
  byDue: false,
  answers: {},
  tasks: {},
  vessel: 'pot',
  soon: false,
  waiting: [],
  out: [],
};

/** A position the baker named: each bake at its stage, the oven cold, nothing silenced. */
export const positionSaid = (
  last: Position,
  places: Readonly<Record<string, BakeStage>>,
  now: number,
): Position => ({
  now,
  oven: OVEN_OFF,
  lanes: {},
  attention: { heard: [], snoozed: {} },
  // A timer of the baker's own runs by the clock, wherever the dough is.
  timers: last.timers,
  starter: last.starter,
  bakes: Object.fromEntries(
    Object.entries(last.bakes).map(([id, place]): [string, BakePlace] => {
      const stage = places[id] ?? 'read.plan';
      return [
        id,
        {
          ...place,
          stage,
          marks: {},
          answers: {},
          tasks: {},
          byDue: false,
          entered: { ...place.entered, [stage]: now },
        },
      ];
    }),
  ),
});
