import type { Vessel } from '../formula/formula.ts';
import type { Equipment, Pot } from './equipment.ts';

/**
 * Whether cold dough may go into this pot while it is hot: never into clay or glass. Enamel only
 * where its maker allows it, which the checklist asks; a pot nobody spoke of is asked about there too.
 * Source: common practice; pot makers' care leaflets, from memory.
 */
export const takesHeat = ({ material }: Pot): boolean =>
  material !== 'clay' && material !== 'glass';

/** Loaves one load of the oven takes in this kind of vessel; 0 where no pot may be loaded hot. */
export function placesFor(
  { pots, tins, stones }: Pick<Equipment, 'pots' | 'tins' | 'stones'>,
  vessel: Vessel,
): number {
  if (vessel === 'pot') return pots.filter(takesHeat).length;
  return vessel === 'tin' ? tins : stones;
}
