import { temperatureIn, TAU } from '../clock/stretch.ts';
import { HEAT } from '../heat/heats.ts';
import { iceFor } from '../heat/ice.ts';
import { learnedOffset } from '../heat/learned.ts';
import {
  doughByBalance,
  HALF_WETTED,
  heatOf,
  heldWater,
  waterAdvice,
  type Mix,
  type WaterAdvice,
} from '../heat/water.ts';
import { HOUR, type Celsius, type Grams, type Hours, type Instant } from '../units.ts';
import { atMix, lastRead, type AtMix, type MixInput } from './mix-known.ts';

/** Water for one stage of a mix. `lands`: where the dough is then reckoned to come out, °C. */
export interface StageWater extends WaterAdvice {
  readonly grams: Grams;
  readonly wanted: Celsius;
  readonly lands: Celsius;
}

const gramsOf = ({ recipe }: MixInput, list: 'first' | 'second', item: string): Grams =>
  recipe.lines[list].find((line) => line.item === item)?.grams ?? 0;

/** Everything in the bowl at the first mix. */
const firstMix = (input: MixInput, at: AtMix): Mix => {
  const { recipe } = input;
  const { hydration } = recipe.formula.levain;
  const flour = recipe.lines.first
    .filter(({ item }) => item.startsWith('flour'))
    .reduce((sum, { grams }) => sum + grams, 0);
  const levain = gramsOf(input, 'first', 'levain');
  const levainFlour = levain / (1 + hydration);
  return {
    wanted: at.wanted.celsius,
    flour: { grams: flour, celsius: at.flour.celsius },
    levain: { flour: levainFlour, water: levain - levainFlour, celsius: at.levain.celsius },
    water: gramsOf(input, 'first', 'water'),
  };
};

/**
 * The first water: it brings flour and levain to the wanted temperature. Null where the first mix has
 * no water of its own. `until`: what was read later does not count.
 */
export function firstWater(input: MixInput, until: Instant = Infinity): StageWater | null {
  const at = atMix(input, until);
  const mix = firstMix(input, at);
  if (mix.water <= 0) return null;
  const advice = waterAdvice(mix, input.offsets, at.tap.celsius);
  const offset = learnedOffset(input.offsets);
  const lands = doughByBalance(mix, advice.celsius, { hydration: HALF_WETTED, offset });
  return { ...advice, grams: mix.water, wanted: mix.wanted, lands };
}

/** Hours the dough has rested, or is to rest, before the salt. */
const restOf = ({ recipe, entered }: MixInput): Hours => {
  const [from, to] = [entered['mix.rest'], entered['mix.salt']];
  return from !== undefined && to !== undefined && to >= from
    ? (to - from) / HOUR
    : recipe.process.rest / 60;
};

/** What went in at a stage: as it was measured there, else as it was advised. */
const poured = (input: MixInput, from: string, to: string, advised: Celsius): Celsius =>
  lastRead(input, 'water.bowl', input.entered[from] ?? 0, input.entered[to] ?? Infinity) ?? advised;

/** The dough when its rest is over, with `offset` laid on it; null where nothing of its water is known. */
const rested = (input: MixInput, offset: number): Celsius | null => {
  const advised = firstWater(input, input.entered['mix.first']);
  if (advised === null) return null;
  const at = atMix(input);
  const water = poured(input, 'mix.weigh', 'mix.first', advised.celsius);
  const mixed = doughByBalance(firstMix(input, at), water, { hydration: HALF_WETTED, offset });
  return temperatureIn({ from: mixed, toward: at.kitchen.celsius, tau: TAU.bowl }, restOf(input));
};

/**
 * The second water, with the salt: it makes up for what the rest took, or the first water could not
 * bring. It goes by the dough as measured since it was mixed, else as reckoned. A weak lever: little
 * water, held to 40 °C. Null where there is none.
 */
export function secondWater(input: MixInput, until: Instant = Infinity): StageWater | null {
  const grams = gramsOf(input, 'second', 'secondWater');
  const since = input.entered['mix.first'] ?? Infinity;
  const dough =
    lastRead(input, 'doughTemperature', since, until) ??
    rested(input, learnedOffset(input.offsets));
  if (grams <= 0 || dough === null) return null;
  const at = atMix(input, until);
  const mix = firstMix(input, at);
  const ofWater = grams * HEAT.water;
  const sum = mix.wanted + (heatOf(mix) * (mix.wanted - dough)) / ofWater;
  const celsius = heldWater(sum);
  return {
    grams,
    wanted: mix.wanted,
    celsius,
    cool: celsius,
    warm: celsius,
    capped: sum > celsius && sum > mix.wanted,
    ice: iceFor({ water: grams, tap: at.tap.celsius, wanted: sum }),
    lands: (heatOf(mix) * dough + ofWater * celsius) / (heatOf(mix) + ofWater),
  };
}

/** A dough measured later than this after it was worked in has drifted: it teaches nothing, h. Judgement. */
const FRESH: Hours = 1 / 3;

/**
 * What the balance had the finished mix at with nothing learned, °C, by the water that was poured, or
 * advised where nobody measured it; null where the mix is not known, or was measured too late.
 */
export function reckonedDough(input: MixInput, measuredAt: Instant): Celsius | null {
  const { entered } = input;
  const worked = entered['mix.temperature'];
  if (entered['mix.weigh'] === undefined || worked === undefined) return null;
  if (measuredAt - worked > FRESH * HOUR) return null;
  const dough = rested(input, 0);
  if (dough === null) return null;
  const until = Math.min(entered['mix.work'] ?? worked, measuredAt - 1);
  const advised = secondWater(input, until);
  if (advised === null) return dough;
  const ofFirst = heatOf(firstMix(input, atMix(input)));
  const ofSecond = advised.grams * HEAT.water;
  const water = poured(input, 'mix.salt', 'mix.temperature', advised.celsius);
  return (ofFirst * dough + ofSecond * water) / (ofFirst + ofSecond);
}
