import { initialTransition, type SnapshotFrom } from 'xstate';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import type { Position } from '../../src/core/records/position.ts';
import { NO_STARTER, type Starter } from '../../src/core/records/starter.ts';
import type { Instant } from '../../src/core/units.ts';
import { attentionMachine } from '../attention/attention.ts';
import { bakeMachine } from '../bake/bake.ts';
import { laneMachine } from '../oven/lane.ts';
import { ovenMachine } from '../oven/oven.ts';

/** The version written with every record. Raised with any change of states, lists or transitions. */
export const MACHINE_VERSION = 12;

export type BakeSnapshot = SnapshotFrom<typeof bakeMachine>;
export type OvenSnapshot = SnapshotFrom<typeof ovenMachine>;
export type LaneSnapshot = SnapshotFrom<typeof laneMachine>;
export type AttentionSnapshot = SnapshotFrom<typeof attentionMachine>;

export type StartFact = Extract<Fact, { kind: 'start' }>;

/** The machines a kitchen is folded with; tests put altered ones in. */
export interface Machines {
  readonly bake: typeof bakeMachine;
  readonly oven: typeof ovenMachine;
  readonly lane: typeof laneMachine;
  readonly attention: typeof attentionMachine;
}

export const MACHINES: Machines = {
  bake: bakeMachine,
  oven: ovenMachine,
  lane: laneMachine,
  attention: attentionMachine,
};

/**
 * The fold of one log. `now` is kitchen time; `seq` the last fact folded in. `standing` are the
 * facts since `base` that no take-back withdrew, and the take-backs themselves. Finished bakes are gone from `bakes`.
 */
export interface Kitchen {
  readonly now: Instant;
  readonly seq: number;
  readonly bakes: Readonly<Record<string, BakeSnapshot>>;
  readonly oven: OvenSnapshot;
  /** By name, in the order they were loaded; an empty, hot one is not among them. */
  readonly lanes: Readonly<Record<string, LaneSnapshot>>;
  readonly attention: AttentionSnapshot;
  readonly timers: Position['timers'];
  readonly starter: Starter;
  /** The plan that stands, and the one that stood at `base`. In no position: it is in its own facts. */
  readonly plan: DayPlan | null;
  readonly planAtBase: DayPlan | null;
  readonly standing: readonly Fact[];
  /** Where the fold began: nothing, or the last jump. No take-back crosses it. */
  readonly base: Position | null;
  /** The kitchen as the last start found it with nothing going on, if any: refolds may begin there. */
  readonly idle: Kitchen | null;
  /** Every start fact met so far, by its id, those taken back too: they pin the recipes. */
  readonly starts: Readonly<Record<string, StartFact>>;
}

const fresh = <T extends { status: string }>([snapshot]: [T, unknown], name: string): T => {
  if (snapshot.status !== 'active') throw new Error(`The ${name} machine does not start.`);
  return snapshot;
};

/** A kitchen in which nothing has happened. */
export const emptyKitchen = (machines: Machines = MACHINES): Kitchen => ({
  now: 0,
  seq: 0,
  bakes: {},
  oven: fresh(initialTransition(machines.oven), 'oven'),
  lanes: {},
  attention: fresh(initialTransition(machines.attention), 'attention'),
  timers: {},
  starter: NO_STARTER,
  plan: null,
  planAtBase: null,
  standing: [],
  base: null,
  idle: null,
  starts: {},
});
