import type { Vessel } from '../formula/formula.ts';
import type { Equipment, Pot } from './equipment.ts';

/**
 * Whether cold dough may go into this pot while it is hot: into bare iron, and where its maker
 * allows it. Where that is not said never into clay or glass; enamel, and a pot nobody spoke of,
 * are asked about by the checklist.
 * Source: common practice; pot makers' care leaflets, from memory.
 */
export const takesHeat = ({ material, cold }: Pot): boolean =>
  material === 'bareIron' || (cold ?? (material !== 'clay' && material !== 'glass'));

/** Loaves one load of the oven takes in this kind of vessel; 0 where no pot may be loaded hot. */
export function placesFor(
  { pots, tins, stones }: Pick<Equipment, 'pots' | 'tins' | 'stones'>,
  vessel: Vessel,
): number {
  if (vessel === 'pot') return pots.filter(takesHeat).length;
  return vessel === 'tin' ? tins : stones;
}
