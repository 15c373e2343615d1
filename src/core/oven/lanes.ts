import type { Vessel } from '../formula/formula.ts';
import type { Grams, Instant, Minutes } from '../units.ts';
import type { Away, Calls } from './hands.ts';
import type { Proofed } from './load-order.ts';

/** Minutes that are one bread's own, where others in the oven have different ones. */
export interface OwnMinutes {
  readonly lidded: Minutes;
  readonly open: Minutes;
  readonly cool: Minutes;
}

/** A loaf that waits for the oven. `grams`: of its dough. */
export interface WaitingLoaf extends Proofed {
  readonly id: string;
  readonly grams: Grams;
  /** Left out: a pot. */
  readonly vessel?: Vessel;
  /** It waits in the room and not in the fridge: a warm proof. */
  readonly warm?: true;
  /** It stands out to warm up, and is not loaded before. */
  readonly standsOutUntil?: Instant;
  /** Its bread's own minutes, fitted by now; left out: those of the plan. */
  readonly own?: OwnMinutes;
}

/** A pot, or a place for a tin or on a stone. `holds` null: any loaf fits. */
export interface Lane {
  readonly id: string;
  readonly holds: Grams | null;
  /** Left out: a pot. */
  readonly vessel?: Vessel;
  /** Hot and empty from then on; left out: as soon as the oven is hot. */
  readonly freeAt?: Instant;
  /** It dropped out: nothing more goes in; what stands in it is baked. */
  readonly droppedOut?: true;
}

/** A loaf that is in a pot by now. */
export interface Standing extends Calls {
  readonly pot: string;
  readonly loaf: string;
  /** Left out: as the plan has it. */
  readonly cool?: Minutes;
}

/**
 * What the plan is made from. `minutes` are those of a piece of `piece` grams, fitted to each loaf's
 * own; without `piece` they hold for all. `lidded` 0: no lid; `cool`: until handed over (120).
 */
export interface LoadInput {
  readonly loaves: readonly WaitingLoaf[];
  readonly pots: readonly Lane[];
  readonly minutes: {
    readonly preheat: Minutes;
    readonly lidded: Minutes;
    readonly open: Minutes;
    readonly recovery: Minutes;
    readonly loadMinutes: Minutes;
    readonly cool?: Minutes;
  };
  readonly piece?: Grams;
  readonly now: Instant;
  /** When oven and pots are hot; left out: now where something bakes, else after the preheat. */
  readonly hotAt?: Instant;
  readonly standing?: readonly Standing[];
  readonly away?: readonly Away[];
}

/** Why a loaf comes late: it is sluggish, fits only some of the pots, or stands out till then. */
export type LateReason = 'sluggish' | 'tooBig' | 'standsOut';

/** One loaf's turn in a pot. */
export interface Turn extends Calls {
  readonly loaf: string;
  /** Out of the fridge; null where it is out already. */
  readonly fetchAt: Instant | null;
  /** Under 35 °C, so that it may go into a bag; set crumb, so that it may be cut. */
  readonly bagAt: Instant;
  readonly sliceAt: Instant;
  readonly reason: LateReason | null;
  /** In the pot already: its calls stand, whatever else is planned. */
  readonly stands: boolean;
}

/**
 * `minutes`: from now to the last loaf out. `key`: `emptyHot` where the oven is hot with nothing in
 * it for `spare` minutes besides recovery, `lastAlone` where the last load alone takes `spare`
 * minutes of a hot oven; null where nothing is to be said.
 */
export interface Energy {
  readonly minutes: Minutes;
  readonly key: 'emptyHot' | 'lastAlone' | null;
  readonly spare: Minutes;
}

export interface LoadPlan {
  readonly lanes: readonly { readonly pot: string; readonly turns: readonly Turn[] }[];
  /** `tooBig` for every pot of its kind, or there is no such pot. */
  readonly unplaced: readonly { readonly loaf: string; readonly reason: 'tooBig' | 'noPot' }[];
  /** Null where nothing bakes. */
  readonly lastOut: Instant | null;
  readonly lastBag: Instant | null;
  /** Calls of what bakes already that come while nobody is there. */
  readonly unattended: readonly {
    readonly pot: string;
    readonly loaf: string;
    readonly call: 'lid' | 'out';
    readonly at: Instant;
  }[];
  readonly energy: Energy;
}
