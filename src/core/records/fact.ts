import type { Doubt } from '../clock/doubt.ts';
import type { DayPlan } from '../day/laid/day-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { Recipe } from '../formula/recipe.ts';
import type { LoafAnswers } from '../log/loaf-names.ts';
import type { Belief } from '../readiness/belief.ts';
import type { TaughtVigour } from '../readiness/carry-over.ts';
import type { Celsius, Grams, Instant } from '../units.ts';
import type { CutRead } from './cut-read.ts';
import type { Position } from './position.ts';
import type { StarterDeed } from './starter.ts';
import type { Cored, TaughtCore, TaughtLoss, Weighed } from './taught.ts';

/** 'oven', a lane of it, 'starter', or the id of a bake. */
export type Who = string;

/** Acts a bake takes. A press names its act, so that a moved stage mismatches loudly. */
export type BakeAct =
  | 'readThrough'
  | 'answer'
  | 'levainSeen'
  | 'levainRipe'
  | 'levainNotYet'
  | 'levainOver'
  | 'starterKept'
  | 'mixed'
  | 'rested'
  | 'workedIn'
  | 'unmeasured'
  | 'touchNow'
  | 'folded'
  | 'spread'
  | 'scattered'
  | 'rolled'
  | 'doughSeen'
  | 'bulkReady'
  | 'bulkNotYet'
  | 'bulkOver'
  | 'trayBaked'
  | 'divided'
  | 'preshaped'
  | 'benchRested'
  | 'shaped'
  | 'inBaskets'
  | 'scooped'
  | 'counterDone'
  | 'inFridge'
  | 'loafSeen'
  | 'loafReady'
  | 'loafNotYet'
  | 'loafOver'
  | 'standOut'
  | 'loafFlat'
  | 'cooled'
  | 'handedOver'
  | 'noted'
  | 'fewer'
  | 'taskDone'
  | 'ended';

/** Acts the oven and its lanes take. */
export type OvenAct =
  | 'ovenOn'
  | 'ovenHot'
  | 'answer'
  | 'pokeReady'
  | 'pokeNotYet'
  | 'pokeOver'
  | 'pokeFlat'
  | 'pokeNow'
  | 'scored'
  | 'loaded'
  | 'lidOff'
  | 'steamOut'
  | 'colourSeen'
  | 'crustReady'
  | 'crustNotYet'
  | 'crustOver'
  | 'crustOnRack'
  | 'unloaded'
  | 'loafFirst'
  | 'loafLater'
  | 'potOut'
  | 'ovenOff'
  | 'taskDone';

/**
 * One measured fact, or what the baker wants the dough at this time. `odd`: it lay outside what is usual, was asked again, and was kept
 * (read-reading.ts). `firstPiece` is how older logs wrote the weight of a piece.
 */
export type Reading = { readonly odd?: true } & (
  | {
      readonly what:
        | 'doughTemperature'
        | 'kitchenTemperature'
        | 'coreTemperature'
        | 'flourTemperature'
        | 'levainTemperature'
        | 'fillingTemperature'
        | 'wantedDough';
      readonly celsius: Celsius;
    }
  /** As it runs from the cold tap, or as it went into the bowl. */
  | { readonly what: 'water'; readonly celsius: Celsius; readonly of: 'tap' | 'bowl' }
  /**
   * Rise since the mix, or since the feed, %: doubled is 100. `in`: a sample of the dough in a jar,
   * which cools faster than the bowl; left out, the dough's own tub.
   */
  | {
      readonly what: 'rise';
      readonly percent: number;
      readonly of: 'dough' | 'levain';
      readonly in?: 'jar';
      /** By eye, and perhaps more: the highest picture there is. */
      readonly atLeast?: true;
    }
  /** How the dough stands where it meets the bowl, and the bubbles at the wall. */
  | {
      readonly what: 'edge';
      readonly edge: 'flat' | 'domed' | 'fallen';
      readonly bubbles: 'none' | 'some' | 'many';
    }
  /** A cold loaf since it went into the fridge, and where it stands against its basket's rim. */
  | {
      readonly what: 'growth';
      readonly grown: 'none' | 'little' | 'grown' | 'unsure';
      readonly rim?: 'below' | 'level' | 'above';
    }
  /** What a dent does. */
  | { readonly what: 'poke'; readonly dent: 'springs' | 'slow' | 'stays' | 'unsure' }
  | { readonly what: 'weight'; readonly grams: Grams; readonly of: 'dough' | 'piece' | 'loaf' }
  | { readonly what: 'firstPiece'; readonly grams: Grams }
  | { readonly what: 'crust'; readonly colour: 'pale' | 'golden' | 'dark' }
);

/** A mix measured against what was reckoned of it with nothing learned, °C. */
export interface Mixed {
  readonly reckoned: Celsius;
  readonly measured: Celsius;
}

/**
 * What the models said when a fact was taken: the instants of one wait by name, and the belief
 * behind them. Replay uses these and never the models.
 */
export interface Result {
  readonly who: Who;
  readonly stage: string;
  /** Entry into the stage: a later wait at the same stage is another wait. */
  readonly since: Instant;
  readonly marks: Readonly<Record<string, Instant>>;
  readonly belief?: Belief;
  /** Why these instants are in doubt, a key of the catalogue. */
  readonly doubt?: Doubt;
  /** Of the dough's first temperature after its mix: what the balance had it at. */
  readonly mixed?: Mixed;
  /** Of a start: what earlier mixes of this kitchen came out above the balance, K, oldest first. */
  readonly offsets?: readonly number[];
  /** Of a core measured in the oven. */
  readonly cored?: Cored;
  /** Of a start: cores that earlier bakes of this kitchen measured, oldest first. */
  readonly cores?: readonly TaughtCore[];
  /** Of a cool loaf on the scale. */
  readonly weighed?: Weighed;
  /** Of a start: what earlier cool loaves of this kitchen weighed, oldest first. */
  readonly weighIns?: readonly TaughtLoss[];
  /** Of a start: what earlier bakes told of this starter, oldest first. */
  readonly vigours?: readonly TaughtVigour[];
  readonly model: string;
}

/** How a timer of the baker's own calls: hot where something burns. */
export type TimerCall = 'act' | 'hot';

/** What the baker did, before it has an id, an instant or results. */
export type Deed =
  | {
      readonly kind: 'start';
      readonly bake: string;
      readonly loaves: readonly string[];
      readonly from: string;
      readonly recipe: Recipe;
      readonly kitchen: Celsius;
      /** Of a bake that a plan has: the plan's id, and its name of the bake. */
      readonly planned?: { readonly plan: string; readonly name: string };
    }
  | {
      readonly kind: 'press';
      readonly who: Who;
      readonly act: BakeAct | OvenAct;
      /** for `answer`; the task for `taskDone`; the loaf for `loafFirst` and `loafLater`; the lane for `potOut` */ readonly item?: string;
      readonly value?: string;
      /** for `loaded`: those that go in; for `fewer`: those that remain */ readonly loaves?: readonly string[];
      /** for `loaded`: where */ readonly lane?: string;
      /** for `ovenOn`: the pots that heat */ readonly lanes?: readonly string[];
      /** for `ovenOn`: most dough each takes, g, where its size is known */ readonly holds?: Readonly<
        Record<string, Grams>
      >;
      /** for `loafFirst` and `loafLater` of a log of before a loaf that was looked at had to go in next */ readonly freely?: true;
      /** for `lidOff` and `steamOut`: when it really was, if earlier than the press */ readonly was?: Instant;
      /** for `noted` */ readonly text?: string;
      /** for `starterKept`: what is kept back for the next bake */ readonly grams?: Grams;
      /** the seq the baker saw when pressing a repeatable act */ readonly seen?: number;
    }
  | {
      readonly kind: 'reading';
      readonly by: 'hand' | 'probe';
      readonly bake: Who;
      readonly reading: Reading;
    }
  | { readonly kind: 'correct'; readonly target: string; readonly reading: Reading }
  | { readonly kind: 'heard'; readonly call: string }
  | { readonly kind: 'snoozed'; readonly call: string; readonly until: Instant }
  | {
      readonly kind: 'timer';
      /** An id of its own. */ readonly timer: string;
      /** A key of the catalogue's timer names. */ readonly name: string;
      readonly until: Instant;
      readonly call: TimerCall;
    }
  | { readonly kind: 'timerOff'; readonly timer: string }
  | ({ readonly kind: 'starter' } & StarterDeed)
  /** A plan that was accepted, or one that stands laid anew. */
  | { readonly kind: 'plan'; readonly plan: DayPlan }
  /** The plan of this id is given up. */
  | { readonly kind: 'planOff'; readonly plan: string }
  /** A version of a formula of the Book: a new one, or one that is known by then. Never written over. */
  | { readonly kind: 'formula'; readonly formula: Formula }
  /** The formula of this id is taken off the Book's list; its versions are kept. */
  | { readonly kind: 'formulaOff'; readonly formula: string }
  /** What a cut loaf of the bake with this start showed, and what was read of it; a bake's last one stands. */
  | {
      readonly kind: 'cut';
      readonly target: string;
      readonly answers: LoafAnswers;
      readonly read: CutRead;
    }
  | { readonly kind: 'takeBack'; readonly target: string }
  | { readonly kind: 'jump'; readonly position: Position };

/** A deed with its identity: `at` is kitchen time, `raw` the wall clock it was read from. */
export type Fact = Deed & {
  readonly id: string;
  readonly device: string;
  readonly at: Instant;
  readonly raw: Instant;
  readonly results?: readonly Result[];
};
