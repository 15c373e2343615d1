import { bakeMachine } from '../../../../machines/bake/bake.ts';
import type { StageMeta } from '../../../../machines/meta.ts';
import { laneMachine } from '../../../../machines/oven/lane.ts';
import { ovenMachine } from '../../../../machines/oven/oven.ts';
import { BAKE_STAGES, OVEN_STAGES, type Hazard } from '../../../../src/core/records/stage.ts';
import { TASKS } from '../../../../src/core/records/task.ts';
import type { SmallStep } from '../../../../src/core/small/small-words.ts';

interface Node {
  readonly states: Readonly<Record<string, Node>>;
  readonly meta?: StageMeta;
}

const hazardsOf = (node: Node, path = ''): readonly (readonly [string, Hazard])[] =>
  Object.entries(node.states).flatMap(([key, inner]) => {
    const name = path === '' ? key : `${path}.${key}`;
    const own = inner.meta?.hazard;
    return [...(own === undefined ? [] : [[name, own] as const]), ...hazardsOf(inner, name)];
  });

/** What the machines say of each stage that has a hazard. */
export const hazards: ReadonlyMap<string, Hazard> = new Map(
  [bakeMachine, ovenMachine, laneMachine].flatMap(({ root }) => hazardsOf(root as Node)),
);

/** All that a child can meet, in the order it comes; tasks one behind the other. */
export const STEPS: readonly SmallStep[] = [...BAKE_STAGES, ...OVEN_STAGES, ...TASKS];
