import { readyCurve } from '../../src/core/clock/hours-until.ts';
import { growthForRise } from '../../src/core/clock/rise.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { temperatureIn, type Path } from '../../src/core/clock/stretch.ts';
import { theta } from '../../src/core/clock/theta.ts';
import { OPENING_BELIEF, type Belief } from '../../src/core/readiness/belief.ts';
import { carriedBelief, toldBy, type TaughtVigour } from '../../src/core/readiness/carry-over.ts';
import { riseEvidence } from '../../src/core/readiness/evidence.ts';
import { beliefOf, openPosterior, quantile, weighIn } from '../../src/core/readiness/posterior.ts';
import {
  DT,
  HORIZON,
  makeDice,
  MINUTES,
  READING_SD,
  trueHours,
  trueRises,
  WANTED,
  type Dice,
  type Dough,
  type World,
} from './synthetic.ts';
import { BAKES, BESIDE, LOOKS, yearDays, type Starter } from './year-days.ts';

/** Levain 20 %, no rye, salt 2 %: one loaf all year. */
const P = 0.0909;
const FACTOR = saltAndRye(2, 0);

/** First forecasts against what came, h: nothing learned, and with the vigour carried over. */
export interface Forecast {
  readonly truth: number;
  readonly unlearned: number;
  readonly carried: number;
  /** Whether the truth lay in the carried forecast's 80 %. */
  readonly covered: boolean;
}

/**
 * The bakes of an invented year in order, each forecast before anything was seen of it, once with nothing
 * ever learned and once from what the bakes before it told, three rises each. In the 'wrong' world gas, Q10
 * and the tub's marks are off all year long, and the thermometer anew each time. Null stands for one that
 * had not risen after 60 h.
 */
export function bakeYear(starter: Starter, world: World, seed: number): (Forecast | null)[] {
  const dice = makeDice(seed);
  const wrong =
    world === 'right'
      ? { q10: 2.8, held: 1, jar: 1 }
      : {
          q10: dice.normal(2.8, 0.25),
          held: Math.exp(dice.normal(0, 0.15)),
          jar: Math.exp(dice.normal(0, 0.07)),
        };
  const past: TaughtVigour[] = [];
  return yearDays(dice, starter).map(({ lnV, room, mixed }, i) => {
    const dough: Dough = {
      p: P,
      factor: FACTOR,
      from: mixed,
      toward: room,
      tau: 5,
      truth: { v: Math.exp(lnV), ...wrong, off: world === 'right' ? 0 : dice.normal(0, 0.5) },
    };
    const began = carriedBelief(past, null);
    const { forecast, belief } = bake(dice, dough, began);
    const alone = toldBy(began, belief);
    if (alone) past.push({ ...alone, start: `${i}`, at: i, flours: { wheat: 100 } });
    return forecast;
  });
}

function bake(dice: Dice, dough: Dough, began: Belief) {
  const { p, factor, from, toward, tau, truth: secret } = dough;
  const rises = trueRises(dough);
  const path: Path = [{ hours: HORIZON, from, toward, tau, factor }];
  const curve = readyCurve(path, 0, HORIZON, (c) => growthForRise(WANTED, p, c));
  const hours = (lnV: number): number => curve(Math.exp(lnV)) ?? HORIZON;
  let posterior = openPosterior(began);
  const carried = hours(quantile(posterior, 0.5));
  const [soonest, latest] = [hours(quantile(posterior, 0.9)), hours(quantile(posterior, 0.1))];
  let at = 0;
  for (const look of LOOKS) {
    const eta = hours(quantile(posterior, 0.5));
    at = Math.max(at + 0.2, look * eta * Math.exp(dice.normal(0, BESIDE)));
    const seen = rises[Math.min(rises.length - 1, Math.round(at / DT))]!;
    const percent = dice.normal(100 * seen * secret.jar, READING_SD);
    const celsius = temperatureIn({ from, toward, tau }, at);
    const evidence = riseEvidence(percent, { theta: theta(path, 0, at), p, celsius });
    posterior = weighIn(posterior, evidence);
  }
  const truth = trueHours(rises);
  const belief = beliefOf(posterior);
  if (truth === null) return { forecast: null, belief };
  const unlearned = hours(OPENING_BELIEF.mean);
  const covered = soonest <= truth && truth <= latest;
  return { forecast: { truth, unlearned, carried, covered }, belief };
}

/** Of a run of bakes: RMSE of the first forecast, min, and the share of the carried ones' 80 % that held. */
export interface Told {
  readonly unlearned: number;
  readonly carried: number;
  readonly coverage: number;
  /** RMS miss of the carried forecast as a share of the true hours: a cold kitchen does not count for more. */
  readonly share: number;
  /** Bakes that rose. */
  readonly bakes: number;
}

export interface Year extends Told {
  /** By how much of the unlearned error the carried one is less; below 0 it is more. */
  readonly gain: number;
  /** Thirty bakes each, in order. */
  readonly quarters: readonly Told[];
}

const told = (bakes: readonly (Forecast | null)[]): Told => {
  const rose = bakes.filter((one): one is Forecast => one !== null);
  const mean = (of: (one: Forecast) => number): number =>
    rose.reduce((sum, one) => sum + of(one), 0) / rose.length;
  const rmse = (of: (one: Forecast) => number): number =>
    MINUTES * Math.sqrt(mean((one) => (of(one) - one.truth) ** 2));
  return {
    unlearned: rmse(({ unlearned }) => unlearned),
    carried: rmse(({ carried }) => carried),
    coverage: mean(({ covered }) => Number(covered)),
    share: Math.sqrt(mean(({ carried, truth }) => (carried / truth - 1) ** 2)),
    bakes: rose.length,
  };
};

/** A year's first forecasts, summed up, whole and in quarters. */
export function year(starter: Starter, world: World, seed: number): Year {
  const bakes = bakeYear(starter, world, seed);
  const whole = told(bakes);
  return {
    ...whole,
    gain: 1 - whole.carried / whole.unlearned,
    quarters: [0, 1, 2, 3].map((i) => told(bakes.slice((i * BAKES) / 4, ((i + 1) * BAKES) / 4))),
  };
}
