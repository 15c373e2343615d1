import type { Grams } from '../units.ts';
import type { Equipment } from './equipment.ts';

/**
 * Litres a kilo of dough wants in its bowl: it nearly doubles from about 0.9 l, and a hand has to
 * get round it. Judgement.
 */
const LITRES_A_KILO = 2;

/** Dough one bowl takes, kg: what hands can mix (common practice, no source), less in a small bowl. */
export const handKilos = ({ kilos, litres }: Equipment['bowls']): number =>
  litres === null ? kilos : Math.min(kilos, litres / LITRES_A_KILO);

/** Bowls a dough of so many grams is shared between. 3,000 g and a bowl for 3 kg: one. */
export const bowlsFor = (dough: Grams, bowls: Equipment['bowls']): number =>
  Math.max(1, Math.ceil(dough / (handKilos(bowls) * 1000) - 1e-9));
