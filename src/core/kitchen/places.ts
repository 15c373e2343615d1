import type { Vessel } from '../formula/formula.ts';
import type { Grams } from '../units.ts';
import type { Equipment, Pot } from './equipment.ts';
import { potHolds } from './pot-holds.ts';

/**
 * Whether cold dough may go into this pot while it is hot: into bare iron, and where its maker
 * allows it. Where that is not said never into clay or glass; enamel, and a pot nobody spoke of,
 * are asked about by the checklist.
 * Source: common practice; pot makers' care leaflets, from memory.
 */
export const takesHeat = ({ material, cold }: Pot): boolean =>
  material === 'bareIron' || (cold ?? (material !== 'clay' && material !== 'glass'));

/**
 * Loaves one load of the oven takes in this kind of vessel; 0 where no pot may be loaded hot. A piece of
 * so many grams counts only the pots that have room for it, where one of them has.
 */
export function placesFor(
  { pots, tins, stones }: Pick<Equipment, 'pots' | 'tins' | 'stones'>,
  vessel: Vessel,
  piece: Grams = 0,
): number {
  if (vessel === 'pot') {
    const hot = pots.filter(takesHeat);
    const large = hot.filter(({ litres }) => litres === null || potHolds(litres) >= piece);
    return large.length || hot.length;
  }
  return vessel === 'tin' ? tins : stones;
}
