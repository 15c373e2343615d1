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

/** So many stand beside the keys on each of the tablets. */
const BESIDE = 8;

const SLOTS = (stage: string): readonly { slot: NumberSlot; natural: boolean }[] => {
  const { first, others } = kindsAt(stage);
  return [...first, ...others].flatMap(({ page }, i) =>
    page.at === 'number' ? [{ slot: page.slot, natural: i < first.length }] : [],
  );
};

/**
 * A scale shows whole grams, or kilograms with a point: '12.3' is a dough of 12300 g. Its ounces have
 * one decimal: '425' is a piece of 42.5 oz where 425 oz would be odd.
 */
export const weightAs = (text: string, slot: NumberSlot, units: Units): number | null => {
  const typed = numberOf(text);
  if (typed === null || judged({ slot, typed }, units) === 'usual') return typed;
  const pointed = text.includes('.');
  const other =
    units.weight === 'g' && pointed
      ? Number((typed * 1000).toFixed(1))
      : units.weight === 'oz' && !pointed && text.length > 2
        ? typed / 10
        : typed;
  return judged({ slot, typed: other }, units) === 'usual' ? other : typed;
};

/** As the keypad of that kind would have set the point: '245' is a dough of 24.5 °C. */
const readAs = (text: string, slot: NumberSlot, units: Units): number | null => {
  const { most, unit } = keysFor(slot, 'possible', units);
  // A tub's mark is told in whole numbers: with a point it is none.
  if (unit === '%') return text.includes('.') ? null : numberOf(text);
  if (!unit.startsWith('°')) return weightAs(text, slot, units);
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

/** What stands beside the keys: the likeliest and a press on to the rest, or, after it, the rest. */
export const besideKeys = (
  kinds: readonly NumberKind[],
  rest: boolean,
): { readonly shown: readonly NumberKind[]; readonly further: boolean } => {
  if (kinds.length <= BESIDE) return { shown: kinds, further: false };
  return rest
    ? { shown: kinds.slice(BESIDE - 1), further: false }
    : { shown: kinds.slice(0, BESIDE - 1), further: true };
};
