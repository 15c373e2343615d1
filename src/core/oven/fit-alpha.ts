import { openPosterior, quantile, weighIn, type Posterior } from '../readiness/posterior.ts';
import type { Celsius, Minutes } from '../units.ts';
import { BOILS, coreAt, firstForetold, minutesToCore, type Baking } from './core-heat.ts';

/**
 * Before anything is measured: 900 g have 96 °C after some 43 min, common practice, no source; kitchens
 * and shapes differ by a third (sd of ln α, judgement).
 */
const PRIOR = { mean: Math.log(1e-6), sd: 0.3 } as const;
/** A probe, and a spot that is not quite the core, K. Judgement. */
const READING_SD = 2;

/** A core that was measured: the loaf, and after how many minutes in the oven. */
export interface CoreReading extends Baking {
  readonly minutes: Minutes;
  readonly core: Celsius;
}

/** What is believed of a kitchen's α_eff, m²/s: middle, and four of five between `low` and `high`. */
export interface AlphaBelief {
  readonly alpha: number;
  readonly low: number;
  readonly high: number;
  /** Readings that were weighed; those too early in a bake say too little. */
  readonly used: number;
  readonly posterior: Posterior;
}

const SIDE = 0.1;

/** Where the one term says nothing yet, the core is at most as warm as where it begins to. */
const foretold = (reading: CoreReading, alpha: number): Celsius =>
  coreAt(reading, reading.minutes, alpha) ?? firstForetold(reading);

/** Later than that, a probe in the crust or in steam; earlier, the first term has not begun. */
const tells = (reading: CoreReading): boolean => {
  const { core, minutes, boils = BOILS } = reading;
  return minutes > 0 && core > firstForetold(reading) && core <= boils + READING_SD;
};

/**
 * Effective diffusivity of this kitchen's loaves from cores that were measured in the oven, by a grid
 * posterior over ln α ~ N(ln 1e-6, 0.3²), readings ± 2 K. Without one that tells, what is believed
 * before. It swallows what the ball leaves out: the pot, the oven, the shape, steam in the crumb.
 * Source: the model of `coreAt`; prior and scatter are judgement.
 */
export function fitAlpha(readings: readonly CoreReading[]): AlphaBelief {
  const telling = readings.filter(tells);
  const posterior = telling.reduce(
    (belief, reading) =>
      weighIn(
        belief,
        (alpha) => -0.5 * ((reading.core - foretold(reading, alpha)) / READING_SD) ** 2,
      ),
    openPosterior(PRIOR),
  );
  const [low, alpha, high] = [SIDE, 0.5, 1 - SIDE].map((a) => Math.exp(quantile(posterior, a))) as [
    number,
    number,
    number,
  ];
  return { alpha, low, high, used: telling.length, posterior };
}

/** Minutes in the oven: four of five loaves are there between `earliest` and `latest`. */
export interface CoreForecast {
  readonly earliest: Minutes;
  readonly likely: Minutes;
  readonly latest: Minutes;
}

/**
 * When a loaf's core is at `target` °C, with its doubt. Advice, and never alone: it calls nobody to
 * the oven, and colour and least time decide. Null: as `minutesToCore`.
 */
export function coreForecast(
  { alpha, low, high }: AlphaBelief,
  baking: Baking,
  target: Celsius,
): CoreForecast | null {
  const at = (one: number): Minutes | null => minutesToCore(baking, target, one);
  const [earliest, likely, latest] = [at(high), at(alpha), at(low)];
  if (earliest === null || likely === null || latest === null) return null;
  return { earliest, likely, latest };
}
