import { readyCurve, type ReadyCurve } from '../../src/core/clock/hours-until.ts';
import { growthForRise } from '../../src/core/clock/rise.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { temperatureIn, type Path } from '../../src/core/clock/stretch.ts';
import { theta } from '../../src/core/clock/theta.ts';
import { riseEvidence } from '../../src/core/readiness/evidence.ts';
import { openPosterior, quantile, weighIn } from '../../src/core/readiness/posterior.ts';

/**
 * Synthetic doughs for the readiness filter: it knows all of a dough but its starter's vigour. The
 * true dough is reckoned here by other code than the filter's, from the same equations ('right')
 * or from altered ones ('wrong').
 */
export type World = 'right' | 'wrong';

export const WANTED = 0.9;
export const HORIZON = 60;
/** Scatter of the readings given, % points. */
export const READING_SD = 8;
const READINGS = 3;
export const MINUTES = 60;

/** Seeded uniform and normal numbers (mulberry32, Box–Muller). */
export function makeDice(seed: number) {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    between: (a: number, b: number) => a + (b - a) * uniform(),
    normal: (mean: number, sd: number) =>
      mean + sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}
export type Dice = ReturnType<typeof makeDice>;

/** The true dough: its own Q10, gas held, temperature error and jar. */
interface Truth {
  readonly v: number;
  readonly q10: number;
  readonly held: number;
  readonly off: number;
  readonly jar: number;
}

export interface Dough {
  readonly p: number;
  /** On the rate, once salted. */
  readonly factor: number;
  /** The hour the salt went in, and the factor till then; left out, it was salted from the first. */
  readonly salting?: { readonly hours: number; readonly unsalted: number };
  readonly from: number;
  readonly toward: number;
  readonly tau: number;
  readonly truth: Truth;
}

const throwDough = (dice: Dice, world: World): Dough => {
  const p = dice.between(0.05, 0.12);
  const factor = saltAndRye(dice.between(1.6, 2.2), dice.between(0, 0.25));
  const from = dice.normal(26, 1.5);
  const toward = dice.normal(22.5, 2);
  const tau = 5 * Math.exp(dice.normal(0, 0.25));
  const v = Math.exp(dice.normal(0, 0.25));
  const truth =
    world === 'right'
      ? { v, q10: 2.8, held: 1, off: 0, jar: 1 }
      : {
          v,
          q10: dice.normal(2.8, 0.25),
          held: Math.exp(dice.normal(0, 0.15)),
          off: dice.normal(0, 0.5),
          jar: Math.exp(dice.normal(0, 0.07)),
        };
  return { p, factor, from, toward, tau, truth };
};

export const DT = 1 / 60;

/** Rise of the true dough, minute by minute, as shares of volume. */
export function trueRises({ p, factor, salting, from, toward, tau, truth }: Dough): number[] {
  const at = (t: number) => temperatureIn({ from, toward, tau }, t) + truth.off;
  const rate = (t: number) => {
    const celsius = at(t);
    const fade = Math.min(1, Math.max(0, celsius / 10));
    const slowed = salting && t < salting.hours ? salting.unsalted : factor;
    return truth.q10 ** ((Math.min(celsius, 30) - 26) / 10) * fade * slowed;
  };
  const rises: number[] = [];
  let m = 0;
  for (let i = 0; i * DT <= HORIZON; i += 1) {
    const t = i * DT;
    if (i > 0) m += (truth.v * DT * (rate(t - DT) + rate(t))) / 2;
    const kelvin = at(t) + 273.15;
    const gas = 3.2 * Math.log(1 + p * (Math.exp(0.54 * m) - 1));
    const held =
      (truth.held * (0.476 * Math.exp(2400 * (1 / kelvin - 1 / 298.15)) * kelvin)) / 298.15;
    const b = gas - held - 0.08;
    rises.push(((kelvin / 298.15) * (b + Math.sqrt(b * b + 0.32 * gas))) / 2);
    if (rises.at(-1)! > 3) break;
  }
  return rises;
}

/** Hours at which the true dough has risen as wanted, or null where it never does. */
export function trueHours(rises: readonly number[], wanted = WANTED): number | null {
  const ready = rises.findIndex((v) => v >= wanted);
  if (ready < 1) return null;
  const share = (wanted - rises[ready - 1]!) / (rises[ready]! - rises[ready - 1]!);
  return (ready - 1 + share) * DT;
}

/** What one dough showed: true hours, and after each number of readings the estimate and its 80 %. */
interface Outcome {
  readonly truth: number;
  readonly eta: readonly number[];
  readonly covered: readonly boolean[];
}

function bake(dice: Dice, world: World): Outcome | null {
  const dough = throwDough(dice, world);
  const rises = trueRises(dough);
  const truth = trueHours(rises);
  if (truth === null) return null;
  const { p, factor, from, toward, tau } = dough;
  const path: Path = [{ hours: HORIZON, from, toward, tau, factor }];
  const curve: ReadyCurve = readyCurve(path, 0, HORIZON, (c) => growthForRise(WANTED, p, c));
  const hours = (lnV: number): number => curve(Math.exp(lnV)) ?? HORIZON;
  let posterior = openPosterior({ mean: 0, sd: 0.25 });
  const eta: number[] = [];
  const covered: boolean[] = [];
  let at = 0;
  for (let readings = 0; ; readings += 1) {
    const middle = hours(quantile(posterior, 0.5));
    eta.push(middle);
    covered.push(
      hours(quantile(posterior, 0.9)) <= truth && truth <= hours(quantile(posterior, 0.1)),
    );
    if (readings === READINGS) return { truth, eta, covered };
    at = readings === 0 ? 0.45 * middle : at + Math.max(0.2, (middle - at) / 2);
    const seen = rises[Math.min(rises.length - 1, Math.round(at / DT))]!;
    const percent = dice.normal(100 * seen * dough.truth.jar, READING_SD);
    const celsius = temperatureIn({ from, toward, tau }, at);
    posterior = weighIn(
      posterior,
      riseEvidence(percent, { theta: theta(path, 0, at), p, celsius }),
    );
  }
}

/** RMSE of the ETA in minutes and coverage of the 80 % interval after 0 to 3 readings. */
export interface Simulated {
  readonly rmse: readonly number[];
  readonly coverage: readonly number[];
  /** RMSE of the best fixed time, min: the sd of the true ones. */
  readonly fixed: number;
  readonly doughs: number;
}

export function simulate(world: World, seed: number, doughs: number): Simulated {
  const dice = makeDice(seed);
  const outcomes = Array.from({ length: doughs }, () => bake(dice, world)).filter(
    (o): o is Outcome => o !== null,
  );
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, one) => sum + one, 0) / values.length;
  const truths = outcomes.map(({ truth }) => truth);
  const middle = mean(truths);
  const after = Array.from({ length: READINGS + 1 }, (_, i) => i);
  return {
    rmse: after.map(
      (i) => MINUTES * Math.sqrt(mean(outcomes.map(({ truth, eta }) => (eta[i]! - truth) ** 2))),
    ),
    coverage: after.map((i) => mean(outcomes.map(({ covered }) => Number(covered[i])))),
    fixed: MINUTES * Math.sqrt(mean(truths.map((one) => (one - middle) ** 2))),
    doughs: outcomes.length,
  };
}
