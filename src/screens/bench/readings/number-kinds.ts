import type { NumberSlot } from '../../../core/records/reading-slot.ts';
import { keysFor } from '../../../core/speech/reading-text.ts';
import type { Units } from '../../../core/units.ts';
import { numberOf, typeKey, type PadKey } from '../../../parts/typed.ts';
import { judged } from './judge-number.ts';
import { kindsAt } from './kinds.ts';

/** What the keys pressed so far would be as one kind of reading. */
export interface NumberKind {
  readonly slot: NumberSlot;
  /** In the baker's unit. */
  readonly typed: number;
  /** Whether it is usual, and makes sense at this stage. */
  readonly strong: boolean;
}

const SLOTS = (stage: string): readonly { slot: NumberSlot; natural: boolean }[] => {
  const { first, others } = kindsAt(stage);
  return [...first, ...others].flatMap(({ page }, i) =>
    page.at === 'number' ? [{ slot: page.slot, natural: i < first.length }] : [],
  );
};

/** As the keypad of that kind would have set the point: '245' is a dough of 24.5 °C. */
const readAs = (text: string, slot: NumberSlot, units: Units): number | null => {
  const { most, unit } = keysFor(slot, 'possible', units);
  // A scale and a tub show whole numbers as they are typed.
  if (!unit.startsWith('°')) return numberOf(text);
  const keyed = [...text].reduce((so, key) => typeKey(so, key as PadKey, most), '');
  // A thermometer shows one decimal: with two of them it is no temperature.
  return keyed.length - text.length > 1 || /\.\d\d/.test(keyed) ? null : numberOf(keyed);
};

/**
 * What a number that was keyed first may be, most likely kinds first: usual ones that make sense at
 * this stage, usual ones, and what makes sense though the number is odd.
 *
 * @example
 * numberKinds('1840', 'bulk.proving', units).map(({ slot }) => slot)
 * // → ['weight.dough', 'weight.piece', 'weight.loaf']
 */
export function numberKinds(text: string, stage: string, units: Units): readonly NumberKind[] {
  const kinds = SLOTS(stage).flatMap(({ slot, natural }) => {
    const typed = readAs(text, slot, units);
    const how = judged({ slot, typed }, units);
    if (typed === null || how === null || how === 'impossible') return [];
    if (how === 'usual') return [{ slot, typed, strong: natural, rank: natural ? 0 : 1 }];
    // Where the point would be our own guess, an odd number is none.
    const meant = natural && typed === numberOf(text);
    return meant ? [{ slot, typed, strong: false, rank: 2 }] : [];
  });
  return kinds.toSorted((a, b) => a.rank - b.rank).map(({ rank: _, ...kind }) => kind);
}
