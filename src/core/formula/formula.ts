import type { Celsius, Grams, Minutes } from '../units.ts';

/** What a flour is, as far as the dough clock and the label care. */
export type Grain = 'wheat' | 'wholeWheat' | 'rye' | 'spelt' | 'barley';

/** A flour of the final formula, levain flour counted in; all `pct` together are 100. */
export interface Flour {
  readonly id: string;
  readonly name: string;
  readonly grain: Grain;
  readonly pct: number;
}

/** How a filling is made ready before it goes in. */
export type Preparation = 'soak' | 'toast' | 'drain' | 'cut' | 'coat';

/**
 * Something that goes into the dough besides flour, water, levain and salt.
 * `pct` is a share of total flour in %. `keeps` says how it may stand:
 * shelf (shelf-stable), hardCheese (hard, aged, pasteurised: up to 30 °C) or perishable.
 */
export interface Filling {
  readonly id: string;
  readonly name: string;
  readonly pct: number;
  readonly keeps: 'shelf' | 'hardCheese' | 'perishable';
  readonly allergens: readonly string[];
  /** Left out: nothing is to be done to it. */
  readonly prepare?: readonly Preparation[];
}

/** A touch of the dough during bulk; `after` is minutes since the touch before it (or the mix). */
export interface BulkTouch {
  readonly kind: 'fold' | 'laminate';
  readonly after: Minutes;
}

/** What the loaf bakes in: a pot with a lid, an open tin, or free on a hot stone with steam. */
export type Vessel = 'pot' | 'tin' | 'stone';

/**
 * How the dough gets its shape: `round` is preshaped, rested and shaped; `scoop` is a high-rye dough
 * that no hand can tighten: it is spooned into the tin.
 */
export type Shaping = 'round' | 'scoop';

/** How the loaf is made. Stages as data; pinned in a bake's first fact. */
export interface Process {
  /** Rest after the first mix. */
  readonly rest: Minutes;
  readonly touches: readonly BulkTouch[];
  /** Wanted rise at the end of bulk, %. */
  readonly rise: number;
  readonly shaping: Shaping;
  /** 0 for a scooped dough. */
  readonly benchRest: Minutes;
  /** Minutes on the counter before the fridge. */
  readonly counter: Minutes;
  /** Usual time in the fridge; 0: proofed warm. */
  readonly retard: Minutes;
  /** Usual warm proof at 24 °C, where nothing is retarded. */
  readonly warm: Minutes;
  readonly fridge: Celsius;
  readonly vessel: Vessel;
  readonly preheat: Minutes;
  /** Under the lid of a pot, or with steam on a stone; 0 in a tin. */
  readonly lidded: Minutes;
  readonly open: Minutes;
  readonly recovery: Minutes;
  readonly cool: Minutes;
}

/**
 * A formula in the true convention: every % is of total flour, levain flour counted in.
 * `hydration` is all water over all flour, %. `pff` is the prefermented share of flour, 0–1.
 * Levain `hydration` is 1.0 for 100 %. `feed` is seed : flour : water by weight.
 * `secondWater` is the share (0–1) of all water that goes in with the salt.
 */
export interface Formula {
  readonly id: string;
  readonly version: number;
  readonly name: string;
  readonly flours: readonly Flour[];
  readonly hydration: number;
  readonly secondWater: number;
  readonly levain: {
    readonly pff: number;
    readonly hydration: number;
    readonly feed: { readonly seed: number; readonly flour: number; readonly water: number };
  };
  readonly salt: number;
  readonly fillings: readonly Filling[];
  /** Dough temperature aimed at after the mix; left out: the usual one (heat/wanted.ts). */
  readonly doughCelsius?: Celsius;
  /** Dough weight of one piece, g. */
  readonly piece: Grams;
  readonly process: Process;
}
