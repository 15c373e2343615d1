import type { Celsius, Grams, Minutes } from '../units.ts';

/** What a flour is, as far as the dough clock and the label care. */
export type Grain = 'wheat' | 'wholeWheat' | 'rye' | 'spelt' | 'barley';

/** A flour of the final formula, levain flour counted in; all `pct` together are 100. */
export interface Flour {
  readonly id: string;
  readonly name: string;
  readonly grain: Grain;
  readonly pct: number;
  /** What it brings besides its grain's gluten. Left out: nobody has said. */
  readonly allergens?: readonly string[];
  /** As of a filling. */
  readonly packet?: 'read';
}

/** How a filling is made ready before it goes in. */
export type Preparation = 'soak' | 'toast' | 'drain' | 'cut' | 'coat';

/** Where a filling comes from, hence how cold it is when it is taken out. */
export type FillingFrom = 'shelf' | 'fridge' | 'freezer';

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
  /**
   * Its baker has read its packet: `allergens` are all that it names. Left out: they are from memory, and
   * an empty list is no answer (allergens.ts).
   */
  readonly packet?: 'read';
  /** Left out: nothing is to be done to it. */
  readonly prepare?: readonly Preparation[];
  /** A name it is listed under with others, such as "dried fruit". Left out: it stands alone. */
  readonly group?: string;
  /**
   * A soaker: water in % of the filling's own dry weight, all of which goes into the dough with it.
   * A line of its own to weigh, counted in no hydration. Left out: none, or what is drained off again.
   */
  readonly soak?: { readonly water: number };
  /** Salt and water within it, % of its weight. Left out: not known, and counted as none. */
  readonly brings?: { readonly salt: number; readonly water: number };
  /** Left out: the shelf, or what `keeps` asks for. */
  readonly from?: FillingFrom;
}

/** A flour of the levain, by the id it has among the formula's; all `pct` of a levain together are 100. */
export interface LevainFlour {
  readonly id: string;
  readonly pct: number;
}

/**
 * Which of the two printed conventions a baker reads and types a formula in. `whole`: % of all flour,
 * the levain's counted in. `bowl`: % of the flour in the bowl, the levain's left out of the count.
 * A formula is kept in the first of them always.
 */
export type Convention = 'whole' | 'bowl';

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
    /** Its own mix of the formula's flours. Left out: the largest of them (levain-shares.ts). */
    readonly flours?: readonly LevainFlour[];
  };
  readonly salt: number;
  readonly fillings: readonly Filling[];
  /** What the baker counts fillings against; kept in % of total flour always. Left out: flour. */
  readonly fillingsOf?: 'flour' | 'dough';
  /** Left out: whole. */
  readonly convention?: Convention;
  /** The baker's own words, up to 2,000 characters. */
  readonly notes?: string;
  /** Dough temperature aimed at after the mix; left out: the usual one (heat/wanted.ts). */
  readonly doughCelsius?: Celsius;
  /** Dough weight of one piece, g. */
  readonly piece: Grams;
  readonly process: Process;
}
