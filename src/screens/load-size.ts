import type { Vessel } from '../core/formula/formula.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { placesFor } from '../core/kitchen/places.ts';

/** Loaves the load press takes: every place there is, or one where no pot is fit (it is told of before). */
export const loadSize = (equipment: Equipment, vessel: Vessel): number =>
  Math.max(1, placesFor(equipment, vessel));
