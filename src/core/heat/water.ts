import type { Celsius, Grams } from '../units.ts';
import { HEAT, HYDRATION, WARMEST_WATER } from './heats.ts';

/** What goes into a mix besides the water, and what it is to come to. Grams and °C. */
export interface Mix {
  readonly wanted: Celsius;
  readonly flour: { readonly grams: Grams; readonly celsius: Celsius };
  /** The levain's own flour and water. */
  readonly levain: { readonly flour: Grams; readonly water: Grams; readonly celsius: Celsius };
  /** All water of the first mix. */
  readonly water: Grams;
  /** The bowl's mass times its heat, kJ/K, at its own temperature; left out, it takes nothing. */
  readonly bowl?: { readonly heat: number; readonly celsius: Celsius };
}

/** Heat capacity of everything in the bowl but the water, J/K by grams and kJ/kg·K. */
const others = ({ flour, levain, bowl }: Mix): number =>
  flour.grams * HEAT.flour +
  levain.flour * HEAT.flour +
  levain.water * HEAT.water +
  (bowl?.heat ?? 0) * 1000;

/**
 * Water temperature for a wanted dough temperature by heat balance, °C, not held to any limit.
 * `hydration` is the heat of wetting taken to be freed, kJ/kg flour: 0 to 15.1. `offset` is what
 * earlier mixes came out above what was wanted, K (negative: too cold).
 * Source: heat balance; hydration heat from Baker's Dictionary.
 */
export function waterByBalance(
  mix: Mix,
  { hydration, offset = 0 }: { readonly hydration: number; readonly offset?: number },
): Celsius {
  const { wanted, flour, levain, water, bowl } = mix;
  const ofWater = water * HEAT.water;
  const short =
    flour.grams * HEAT.flour * (wanted - flour.celsius) +
    (levain.flour * HEAT.flour + levain.water * HEAT.water) * (wanted - levain.celsius) +
    (bowl ? bowl.heat * 1000 * (wanted - bowl.celsius) : 0) -
    hydration * flour.grams;
  const learned = (offset * (others(mix) + ofWater)) / ofWater;
  return wanted + short / ofWater - learned;
}

/** How warm the water should be, and between which two it may lie. `capped`: the sum asked for more. */
export interface WaterAdvice {
  readonly celsius: Celsius;
  readonly cool: Celsius;
  readonly warm: Celsius;
  readonly capped: boolean;
  /** The sum asked for colder than the tap can give; ice would be needed. */
  readonly iced: boolean;
}

/** Mixes it takes before the learned offset replaces the doubt about the heat of wetting. */
export const LEARNED_AFTER = 5;

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half)
    ? (sorted[half - 1]! + sorted[half]!) / 2
    : sorted[Math.floor(half)]!;
};

/**
 * The water to take. Until five mixes are logged both ends of the hydration heat are kept and the
 * middle is advised; after that the balance with the median of the last five offsets (measured −
 * wanted, K, the same mixing method). Never above 40 °C.
 * Source: heat balance; the offset rule is judgement.
 */
export function waterAdvice(mix: Mix, offsets: readonly number[], tap: Celsius = 5): WaterAdvice {
  const learned = offsets.length >= LEARNED_AFTER;
  const offset = learned ? median(offsets.slice(-LEARNED_AFTER)) : 0;
  const by = (hydration: number) => waterByBalance(mix, { hydration, offset });
  const middle = by(HYDRATION / 2);
  const [cool, warm] = learned ? [middle, middle] : [by(HYDRATION), by(0)];
  const held = (celsius: Celsius) => Math.min(WARMEST_WATER, Math.max(tap, celsius));
  return {
    celsius: held(middle),
    cool: held(cool),
    warm: held(warm),
    capped: middle > WARMEST_WATER,
    iced: middle < tap,
  };
}
