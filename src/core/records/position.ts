import type { Doubt } from '../clock/doubt.ts';
import type { Vessel } from '../formula/formula.ts';
import type { Belief } from '../readiness/belief.ts';
import type { Grams, Instant } from '../units.ts';
import type { Reading, TimerCall } from './fact.ts';
import type { Starter } from './starter.ts';

/** A task that a wait carries: when it called, and when it was done (null: not yet). */
export interface TaskState {
  readonly called: Instant | null;
  readonly done: Instant | null;
}

/** Where one machine stands, as plain data. `marks` are the instants of its present wait. */
export interface Place {
  readonly stage: string;
  readonly marks: Readonly<Record<string, Instant>>;
  /** Last entry into each stage so far. */
  readonly entered: Readonly<Record<string, Instant>>;
  /** Whether the present stage was entered because time ran out: then it calls. */
  readonly byDue: boolean;
  readonly answers: Readonly<Record<string, string>>;
  /** Tasks of the present wait that have called, and those done in this bake, by name. */
  readonly tasks: Readonly<Record<string, TaskState>>;
}

/** A running bake's place; `start` is the id of the fact that pins its recipe. */
export interface BakePlace extends Place {
  readonly start: string;
  /** Loaves that remain once the baker gave some up; left out while all of the start's are there. */
  readonly loaves?: readonly string[];
  /** Touches of the bulk already done. */
  readonly touches: number;
  readonly belief: Belief;
  /** Why the present wait's instants are in doubt; left out where they are not. */
  readonly doubt?: Doubt;
  /** Last standing reading of each slot (reading-slot.ts), with its instant. */
  readonly readings: Readonly<Record<string, { readonly at: Instant; readonly reading: Reading }>>;
}

export interface OvenPlace extends Place {
  /** What the oven is made ready for: of the first loaf that waits, else of the last that did. */
  readonly vessel: Vessel;
  /** In the order they go in: those to bake first, then as they came, then those left for later. */
  readonly waiting: readonly string[];
  /** Loaves of a warm proof are coming: it is wanted hot though nobody waits. */
  readonly soon: boolean;
  readonly out: readonly string[];
  /** The pots that heat, as lanes, one loaf each; left out in logs of before pots were told apart. */
  readonly lanes?: readonly string[] | undefined;
  /** Most dough each of them takes, g; left out where no size is known. */
  readonly holds?: Readonly<Record<string, Grams>> | undefined;
  /** What was said of waiting loaves: they jump the queue, or go in last. Left out where nothing was. */
  readonly turns?: Readonly<Record<string, Turn>> | undefined;
  /** The list before the oven was gone through since it was turned on; left out where not. */
  readonly madeReady?: true | undefined;
}

/** Whether a loaf is baked before the others, or after them; `flat`: it went over, and bakes in a tray now. */
export type Turn = 'first' | 'later' | 'flat';

/** What a lane bakes in: what its recipe says, or the tray of a loaf that went over. */
export type LaneVessel = Vessel | 'tray';

/** One pot from its load on, until it is hot and empty again; or all that is in tins or on the stone. */
export interface LanePlace extends Place {
  readonly vessel: LaneVessel;
  readonly loaves: readonly string[];
  /** It was taken out of its pot and finishes on the bare rack; left out where not. */
  readonly onRack?: true;
}

/** Which pending calls were silenced, and which put off until when (and how often). */
export interface AttentionPlace {
  readonly heard: readonly string[];
  readonly snoozed: Readonly<
    Record<string, { readonly until: Instant | null; readonly times: number }>
  >;
}

/** A running time of the baker's own. It stands, overdue, until it is stopped. */
export interface RunningTimer {
  /** A key of the catalogue's timer names. */
  readonly name: string;
  readonly until: Instant;
  readonly call: TimerCall;
}

/** The whole kitchen as plain data, written with every record; finished bakes are left out. */
export interface Position {
  readonly now: Instant;
  readonly bakes: Readonly<Record<string, BakePlace>>;
  readonly oven: OvenPlace;
  /** By its name (lane.ts); only what is loaded, or heats up again. */
  readonly lanes: Readonly<Record<string, LanePlace>>;
  readonly attention: AttentionPlace;
  /** By id. */
  readonly timers: Readonly<Record<string, RunningTimer>>;
  readonly starter: Starter;
}
