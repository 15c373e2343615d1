import { isLane } from '../../src/core/records/lane.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { stepBake, stepLane, stepOven, type Stepped } from './step.ts';

/** What time and models tell any machine alike. */
type Told =
  | { readonly type: 'due'; readonly at: Instant }
  | { readonly type: 'lead'; readonly at: Instant; readonly task: string }
  | {
      readonly type: 'judged';
      readonly at: Instant;
      readonly marks: Readonly<Record<string, Instant>>;
    };

/** One such event into the oven, a lane of it, or a bake. */
export const stepMachine = (
  kitchen: Kitchen,
  machines: Machines,
  who: string,
  event: Told,
): Stepped => {
  if (who === 'oven') return stepOven(kitchen, machines, event);
  return isLane(who)
    ? stepLane(kitchen, machines, who, event)
    : stepBake(kitchen, machines, who, event);
};
