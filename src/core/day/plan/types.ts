import type { Instant, Minutes } from '../../units.ts';

/**
 * A wait of the dough or the iron: no hands. `min`…`max` is hard, `typicalFrom`…`typicalTo` is free,
 * between them it costs points: `weightShort` or `weightLong` all the way to the limit of its side.
 * Every length here is a multiple of 5 minutes.
 */
export interface Wait {
  min: Minutes;
  typicalFrom: Minutes;
  typicalTo: Minutes;
  max: Minutes;
  weightShort: number;
  weightLong: number;
}

/** One ratio of feeding the levain; `extra` points for choosing it. */
export interface Feed extends Wait {
  name: string;
  extra: number;
}

/** Hands inside a wait: `at` after the step's own hands, by so much earlier or later. */
export interface SideTouch {
  name: string;
  hands: Minutes;
  at: Minutes;
  earlier: Minutes;
  later: Minutes;
  weight: number;
}

/**
 * A touch and the wait after it. `beforeNext` is a touch counted back from the next step: the oven goes
 * on. `uses` is held until the next step begins, `ovenAfter` so long after the hands.
 */
export interface Step {
  name: string;
  hands: Minutes;
  wait: Wait | { choices: Feed[] };
  during?: SideTouch[];
  beforeNext?: Wait & { name: string; hands: Minutes };
  uses?: { bowls?: number; fridge?: number; oven?: 1 };
  ovenAfter?: Minutes;
}

/**
 * One chain of steps. `due`: the end of its last wait, hard. Without it the bake begins at `startAt`
 * and ends within `horizonMinutes` (7200), each hour to the end at `finishCostPerHour` (0.2). `fixed`
 * touches, by name, do not move; `stayPut` ones cost points for moving.
 */
export interface Batch {
  name: string;
  loaves?: number;
  fixed?: Record<string, Instant>;
  steps: Step[];
  due: Instant | null;
  startAt?: Instant;
  finishCostPerHour?: number;
  horizonMinutes?: Minutes;
  stayPut?: Record<string, { at: Instant; costPer5Min: number }>;
}

/** A half-open stretch of time. `canBend` is true unless said otherwise. */
export interface Span {
  name?: string;
  from: Instant;
  to: Instant;
  canBend?: boolean;
}

export interface Kitchen {
  fridgePlaces: number;
  bowls: number;
  pots: number;
  temperatureC: number;
  ovenTimer?: boolean;
}

/** Everything a plan may depend on. `blocked`: no hands; `ratherNot`: hands cost points. */
export interface PlanInput {
  planFrom: Instant;
  now?: Instant;
  timeZone?: string;
  blocked: Span[];
  ratherNot: (Span & { cost: number })[];
  ovenBusy?: Span[];
  kitchen: Kitchen;
  batches: Batch[];
}

/**
 * `earliest`…`latest`: where it stands in all best plans. `fineUntil`: the plan costs at most one point
 * more; `lastPossible`: there is a plan at all. For all four the other bakes stand still, for a side
 * touch its own bake's main touches too.
 */
export interface PlannedTouch {
  batch: string;
  name: string;
  at: Instant;
  hands: Minutes;
  earliest: Instant;
  latest: Instant;
  fineUntil: Instant;
  lastPossible: Instant;
  choice?: string;
  frozen: boolean;
}

/**
 * One change that by itself makes a plan possible. A later `start`, and `unpin` (a touch the baker put to
 * an hour, let go), are told by a day, not by `plan`.
 */
export type Change =
  | {
      change: 'blocked';
      name: string;
      from: Instant;
      to: Instant;
      endEarlierBy: Minutes | null;
      startLaterBy: Minutes | null;
    }
  | { change: 'due' | 'start'; batch: string; laterBy: Minutes }
  | { change: 'longer' | 'shorter'; batch: string; wait: string; by: Minutes }
  | { change: 'fewerLoads'; batch: string; loads: number }
  | { change: 'dropTouch'; batch: string; touch: string }
  | { change: 'unpin'; batch: string; touch: string; at: Instant };

/**
 * `atMostFromBest`: no plan is cheaper by more points; 0 where it is proven best. `changes`: each alone
 * would do; `together`, where none does: all of them at once.
 */
export type PlanResult =
  | {
      fits: true;
      cost: number;
      atMostFromBest: number;
      touches: PlannedTouch[];
      ready: { batch: string; at: Instant }[];
    }
  | { fits: false; changes: Change[]; because: string[]; together?: Change[] }
  | { fits: null; cost?: number; touches?: PlannedTouch[]; bound: number };

/**
 * How long to look, and whether to say what would do where nothing fits (it is, unless `why` is false:
 * that takes many plans). `limitMs` is turned into steps of the search unless `now` gives the time, in ms:
 * then it is held against that clock.
 */
export interface PlanOptions {
  limitMs?: number;
  now?: () => number;
  why?: boolean;
}
