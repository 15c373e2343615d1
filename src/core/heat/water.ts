import type { Celsius, Grams } from '../units.ts';
import { HEAT, HYDRATION, WARMEST_WATER } from './heats.ts';
import { iceFor } from './ice.ts';
import { LEARNED_AFTER, learnedOffset } from './learned.ts';

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

/** What is taken of the heat of wetting: half of it, known to no one. Source: judgement. */
export const HALF_WETTED = HYDRATION / 2;

/** Heat capacity of everything in the bowl but the water, J/K by grams and kJ/kg·K. */
const others = ({ flour, levain, bowl }: Omit<Mix, 'wanted'>): number =>
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

/**
 * The dough that comes of water at `celsius`, °C: the inverse of `waterByBalance`.
 * Source: heat balance.
 */
export function doughByBalance(
  mix: Omit<Mix, 'wanted'>,
  celsius: Celsius,
  { hydration, offset = 0 }: { readonly hydration: number; readonly offset?: number },
): Celsius {
  const { flour, levain, water, bowl } = mix;
  const ofLevain = levain.flour * HEAT.flour + levain.water * HEAT.water;
  const ofBowl = (bowl?.heat ?? 0) * 1000;
  const held =
    flour.grams * HEAT.flour * flour.celsius +
    ofLevain * levain.celsius +
    ofBowl * (bowl?.celsius ?? 0) +
    water * HEAT.water * celsius +
    hydration * flour.grams;
  return held / heatOf(mix) + offset;
}

/** Heat capacity of the whole mix, J/K. */
export const heatOf = (mix: Omit<Mix, 'wanted'>): number => others(mix) + mix.water * HEAT.water;

/** How warm the water should be, and between which two it may lie. `capped`: the sum asked for more. */
export interface WaterAdvice {
  readonly celsius: Celsius;
  readonly cool: Celsius;
  readonly warm: Celsius;
  readonly capped: boolean;
  /** Of the water, so many grams as ice: the tap is not that cold. 0 where it is. */
  readonly ice: Grams;
}

/** Held to what water can be: ice makes it 0 °C at the least, hands bear 40 at the most. */
export const heldWater = (celsius: Celsius): Celsius =>
  Math.min(WARMEST_WATER, Math.max(0, celsius));

/**
 * The water to take, from a tap of `tap` °C. Until five mixes are logged both ends of the hydration
 * heat are kept and the middle is advised, less what was learned so far; after that the learned
 * offset alone. `offsets`: what mixes of this kitchen and way came out above the balance, K. Never
 * above 40 °C.
 * Source: heat balance; the offset rule is judgement.
 */
export function waterAdvice(mix: Mix, offsets: readonly number[], tap: Celsius): WaterAdvice {
  const offset = learnedOffset(offsets);
  const by = (hydration: number) => waterByBalance(mix, { hydration, offset });
  const middle = by(HALF_WETTED);
  const [cool, warm] = offsets.length >= LEARNED_AFTER ? [middle, middle] : [by(HYDRATION), by(0)];
  return {
    celsius: heldWater(middle),
    cool: heldWater(cool),
    warm: heldWater(warm),
    capped: middle > WARMEST_WATER,
    ice: iceFor({ water: mix.water, tap, wanted: middle }),
  };
}
