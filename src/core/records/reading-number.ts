import type { Reading } from './fact.ts';
import type { NumberSlot } from './reading-slot.ts';

/** The number of a reading in its own unit (°C, g, %); null where it is a sign. */
export const numberIn = (reading: Reading): number | null => {
  if ('celsius' in reading) return reading.celsius;
  if ('grams' in reading) return reading.grams;
  return 'percent' in reading ? reading.percent : null;
};

/** A number as the reading of a slot. The inverse of `slotOf` and `numberIn`. */
export const readingOf = (slot: NumberSlot, number: number): Reading => {
  switch (slot) {
    case 'doughTemperature':
    case 'kitchenTemperature':
    case 'coreTemperature':
    case 'flourTemperature':
    case 'levainTemperature':
    case 'fillingTemperature':
    case 'wantedDough':
      return { what: slot, celsius: number };
    case 'water.tap':
      return { what: 'water', celsius: number, of: 'tap' };
    case 'water.bowl':
      return { what: 'water', celsius: number, of: 'bowl' };
    case 'rise.dough':
      return { what: 'rise', percent: number, of: 'dough' };
    case 'rise.levain':
      return { what: 'rise', percent: number, of: 'levain' };
    case 'weight.dough':
      return { what: 'weight', grams: number, of: 'dough' };
    case 'weight.piece':
      return { what: 'weight', grams: number, of: 'piece' };
    case 'weight.loaf':
      return { what: 'weight', grams: number, of: 'loaf' };
    case 'firstPiece':
      return { what: slot, grams: number };
  }
};
