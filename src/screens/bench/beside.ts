import { createMemo, type Accessor } from 'solid-js';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { bakeMarks } from '../../core/records/bake-marks.ts';
import type { EdgeMark } from '../../parts/RuledEdge.tsx';
import { several } from '../../core/speech/words/several.ts';
import { fill } from '../../core/speech/fill.ts';
import { bakeSaid } from '../bake-name.ts';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { leapIsBeside } from '../leap-due.ts';
import { othersOf, type Other } from '../others.ts';
import { starterIsBeside } from '../starter-due.ts';
import { nameIn } from '../stage-names.ts';
import { ovenAhead, stepsOf, tickOf } from './steps.ts';

export interface Beside {
  /** The other running bakes, overdue first. */
  readonly others: Accessor<readonly Other[]>;
  /** Whether anything stands beside the act: another bake, a timer, the starter, or a leap of the clock. */
  readonly any: Accessor<boolean>;
  /** The mark of the bake on show; undefined while it is the only one. */
  readonly mark: Accessor<number | undefined>;
  /** The oven while it heats ahead of these loaves, and the others' marks along their own steps. */
  readonly onEdge: Accessor<readonly { readonly mark: EdgeMark; readonly at: number }[]>;
  /** Whether the oven heats ahead of the loaves on show. */
  readonly heats: Accessor<boolean>;
  /** Shows another bake's bench and says which. */
  goTo(id: string): void;
}

/** What the bench of one bake knows of the others. Call it inside a component. */
export function makeBeside(
  house: House,
  bake: Accessor<string>,
  onBake: (id: string) => void,
): Beside {
  const hour = (at: number): string => house.hour(at);
  const marks = createMemo(() => bakeMarks(house.records()));
  const others = createMemo(() => othersOf(house.kitchen(), bake(), marks(), hour));
  const along = (id: string): number => {
    const at = focusOn(house.kitchen(), id);
    if (at === null) return 0;
    const steps = stepsOf(at.bake.context.recipe);
    return (tickOf(steps, stageOf(at.machine)) + 0.5) / steps.length;
  };
  const ovenOnEdge = (): readonly { readonly mark: EdgeMark; readonly at: number }[] => {
    const at = focusOn(house.kitchen(), bake());
    const stage = at && ovenAhead(house.kitchen(), at);
    if (!at || !stage) return [];
    const steps = stepsOf(at.bake.context.recipe);
    return [{ mark: 'oven', at: (tickOf(steps, stage) + 0.5) / steps.length }];
  };
  return {
    others,
    any: () =>
      others().length > 0 ||
      Object.keys(house.kitchen().timers).length > 0 ||
      starterIsBeside(house.kitchen()) ||
      leapIsBeside(house),
    mark: () => (others().length > 0 ? marks()[bake()] : undefined),
    onEdge: () => [
      ...ovenOnEdge(),
      ...others().map((other) => ({ mark: other.mark, at: along(other.id) })),
    ],
    heats: () => ovenOnEdge().length > 0,
    goTo(id) {
      onBake(id);
      const at = focusOn(house.kitchen(), id);
      if (at === null) return;
      const stage = nameIn(house.kitchen(), at.who, stageOf(at.machine));
      house.say(fill(several.moved, { bake: bakeSaid(house.kitchen(), id, hour), stage }));
    },
  };
}
