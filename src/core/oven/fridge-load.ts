import { DOUGH_HEAT } from '../heat/heats.ts';
import type { Celsius, Grams, Hours, Minutes } from '../units.ts';

/** Heat a home fridge carries off besides its own losses, kJ in an hour (some 80 W). Judgement. */
const CARRIES = 290;
/** Between two groups, so that the air is cold again; and no loaf waits longer outside. Judgement. */
const GAP: Minutes = 20;
const MOST_GROUPS = 4;

/** Loaves that go into a fridge together. */
export interface FridgeLoad {
  readonly loaves: number;
  /** Dough of one, g. */
  readonly grams: Grams;
  readonly from: Celsius;
  /** The fridge's own temperature. */
  readonly to: Celsius;
}

/**
 * Heat that the fridge must take up until the loaves are as cold as itself, kJ: m·cp·ΔT. `heat`: the
 * dough's, kJ/kg·K, 2.91 unless said (2.15–3.19 in print). 0 where they are no warmer.
 * Source: heat balance.
 *
 * @example
 * fridgeHeat({ loaves: 24, grams: 900, from: 25, to: 4 }) // → 1319.98
 * fridgeHeat({ loaves: 24, grams: 900, from: 25, to: 4 }, 2.8) // → 1270.08
 */
export const fridgeHeat = (
  { loaves, grams, from, to }: FridgeLoad,
  heat: number = DOUGH_HEAT,
): number => ((loaves * grams) / 1000) * heat * Math.max(0, from - to);

/**
 * `key`: null where the fridge takes it in its stride; `stagger`: in groups; `staggerCold`: in groups,
 * the dial lower an hour before, and whatever else is warm stays out. `first`: loaves in each group
 * (the last may be smaller), `gap` minutes apart. `hours`: what a home fridge works on that heat.
 */
export interface FridgeAdvice {
  readonly kilojoules: number;
  readonly hours: Hours;
  readonly key: 'stagger' | 'staggerCold' | null;
  readonly groups: number;
  readonly first: number;
  readonly gap: Minutes;
}

/**
 * How to bring loaves into the fridge without warming what is in it: up to an hour's work of the fridge
 * at once, else in two to four groups of equal size 20 minutes apart. The loaves on the counter rise
 * meanwhile, so that the groups are few.
 * Source: `fridgeHeat`; what a fridge carries and the groups are judgement.
 *
 * @example
 * fridgeAdvice({ loaves: 24, grams: 900, from: 25, to: 4 }).groups // → 4
 * fridgeAdvice({ loaves: 2, grams: 900, from: 25, to: 4 }).key // → null
 */
export function fridgeAdvice(load: FridgeLoad): FridgeAdvice {
  const kilojoules = fridgeHeat(load);
  const hours = kilojoules / CARRIES;
  const groups = Math.max(1, Math.min(MOST_GROUPS, load.loaves, Math.ceil(hours)));
  const key = groups === 1 ? null : hours > MOST_GROUPS ? 'staggerCold' : 'stagger';
  const first = Math.ceil(load.loaves / groups);
  return {
    kilojoules,
    hours,
    key,
    // Groups of that size may be fewer: 9 loaves in fours are three.
    groups: Math.max(1, Math.ceil(load.loaves / Math.max(1, first))),
    first,
    gap: groups === 1 ? 0 : GAP,
  };
}
