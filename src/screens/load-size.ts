import type { Vessel } from '../core/formula/formula.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import { placesFor } from '../core/kitchen/places.ts';

/** Loaves one load press takes: each pot is loaded by itself; tins and a stone take what they hold. */
export const loadSize = (equipment: Equipment, vessel: Vessel): number =>
  vessel === 'pot' ? 1 : Math.max(1, placesFor(equipment, vessel));
