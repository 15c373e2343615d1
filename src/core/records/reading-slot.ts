import type { Reading } from './fact.ts';

/** Kinds of reading that are a number. */
export type NumberSlot =
  | 'doughTemperature'
  | 'kitchenTemperature'
  | 'coreTemperature'
  | 'flourTemperature'
  | 'levainTemperature'
  | 'fillingTemperature'
  | 'wantedDough'
  | 'water.tap'
  | 'water.bowl'
  | 'rise.dough'
  | 'rise.levain'
  | 'weight.dough'
  | 'weight.piece'
  | 'weight.loaf'
  | 'firstPiece';

/** Kinds of reading that are chosen by sight or touch. */
export type SignSlot = 'edge' | 'growth' | 'poke' | 'crust';

/**
 * What a reading speaks of: its kind, and of what where that differs. A newer reading of a slot
 * stands for the older; a correction must be of the same slot.
 */
export type Slot = NumberSlot | SignSlot;

/** @example slotOf({ what: 'rise', percent: 50, of: 'levain' }) // → 'rise.levain' */
export const slotOf = (reading: Reading): Slot =>
  'of' in reading ? (`${reading.what}.${reading.of}` as Slot) : reading.what;
