import { temperatureIn, type Path, type Stretch } from '../clock/stretch.ts';
import type { Celsius, Hours } from '../units.ts';

/** A temperature measured in a dough, `hours` from where its path begins. */
export interface Measured {
  readonly hours: Hours;
  readonly celsius: Celsius;
}

/** The room's temperature from an hour on, until the next one; the first begins at 0. */
export type Room = readonly Measured[];

/** What is known of a body before it is measured: its usual τ (h) and the temperature it begins at. */
export interface Body {
  readonly tau: Hours;
  readonly start: Celsius;
}

/** A body's fitted way: it begins at `from`, drifts with `tau` toward the room's temperature + `offset`. */
export interface Drift {
  readonly from: Celsius;
  readonly tau: Hours;
  readonly offset: number;
}

/** Scatter of ln τ from bowl to bowl, of a room's true temperature, of a thermometer, K. Judgement. */
const SD = { lnTau: 0.35, room: 1, reading: 0.3 } as const;
/** Nothing but a guess is known of where a body begins until it is measured, K. Judgement. */
const START_SD = 4;
/** The grid over ln τ, in its sd: 4 either way. */
const POINTS = 61;
const REACH = 4;

/** What one τ of the grid makes of the readings so far: sums of the normal equations, and where it stands. */
interface Sums {
  readonly tau: Hours;
  /** Log of the prior of τ. */
  readonly prior: number;
  hours: Hours;
  /** What the room has added by `hours`: T = start·e^{−hours/τ} + offset·(1 − e^{−hours/τ}) + `air`. */
  air: number;
  xx: number;
  xy: number;
  yy: number;
  xr: number;
  yr: number;
  rr: number;
}

/** The room's part carried on to `hours`: a step of Newton's law for each piece of it. */
const airAt = (
  room: Room,
  { tau, hours: from, air }: Pick<Sums, 'tau' | 'hours' | 'air'>,
  hours: Hours,
): number => {
  let sum = air * Math.exp((from - hours) / tau);
  for (let i = 0; i < room.length; i += 1) {
    const begin = i === 0 ? from : Math.max(from, room[i]!.hours);
    const until = Math.min(hours, room[i + 1]?.hours ?? hours);
    if (until <= begin) continue;
    sum += room[i]!.celsius * (Math.exp((until - hours) / tau) - Math.exp((begin - hours) / tau));
  }
  return sum;
};

const WEIGHT = 1 / SD.reading ** 2;

const weighIn = (sums: Sums, room: Room, start: Celsius, { hours, celsius }: Measured): void => {
  sums.air = airAt(room, sums, hours);
  sums.hours = hours;
  const kept = Math.exp(-hours / sums.tau);
  const gone = 1 - kept;
  const rest = celsius - sums.air - start * kept;
  sums.xx += WEIGHT * kept * kept;
  sums.xy += WEIGHT * kept * gone;
  sums.yy += WEIGHT * gone * gone;
  sums.xr += WEIGHT * kept * rest;
  sums.yr += WEIGHT * gone * rest;
  sums.rr += WEIGHT * rest * rest;
};

/**
 * Start and offset by least squares under their priors, for one τ, and the log of how well that τ
 * explains the readings (the marginal likelihood of a linear Gaussian model, up to a constant).
 */
const solve = ({ xx, xy, yy, xr, yr, rr, prior }: Omit<Sums, 'tau' | 'hours' | 'air'>) => {
  const det = xx * yy - xy * xy;
  const warmer = (yy * xr - xy * yr) / det;
  const offset = (xx * yr - xy * xr) / det;
  const log = prior - 0.5 * (rr - warmer * xr - offset * yr) - 0.5 * Math.log(det);
  return { warmer, offset, log };
};

/** Takes one reading more, none earlier than the one before, and gives the drift fitted to all so far. */
export type DriftFit = (next: Measured) => Drift;

/**
 * A body's drift fitted to what was measured in it: exact over (ln τ ~ N(ln τ₀, .35²), room ± 1 K,
 * readings ± 0.3 K) on a grid of τ; τ is the posterior's mean of ln τ, start and offset the best for
 * it. What the grid has summed up is kept, so that one reading more costs little.
 * Source: Newton's law; the scatter is judgement.
 */
export function driftFit(room: Room, { tau: usual, start }: Body): DriftFit {
  const empty = (z: number): Sums => ({
    tau: usual * Math.exp(SD.lnTau * z),
    prior: -0.5 * z * z,
    hours: 0,
    air: 0,
    ...{ xx: 1 / START_SD ** 2, xy: 0, yy: 1 / SD.room ** 2, xr: 0, yr: 0, rr: 0 },
  });
  const z = Array.from({ length: POINTS }, (_, i) => -REACH + (2 * REACH * i) / (POINTS - 1));
  const grid = z.map(empty);
  const readings: Measured[] = [];
  return (next) => {
    readings.push(next);
    for (const sums of grid) weighIn(sums, room, start, next);
    const logs = grid.map((sums) => solve(sums).log);
    const most = Math.max(...logs);
    let [all, mean] = [0, 0];
    for (const [i, log] of logs.entries()) {
      const weight = Math.exp(log - most);
      all += weight;
      mean += weight * z[i]!;
    }
    const best = empty(mean / all);
    for (const reading of readings) weighIn(best, room, start, reading);
    const { warmer, offset } = solve(best);
    return { from: start + warmer, tau: best.tau, offset };
  };
}

/** The drift fitted to readings in any order; without one, what was believed before. */
export function fitDrift(readings: readonly Measured[], room: Room, body: Body): Drift {
  const fit = driftFit(room, body);
  const believed: Drift = { from: body.start, tau: body.tau, offset: 0 };
  return readings
    .toSorted((a, b) => a.hours - b.hours)
    .reduce((_, reading) => fit(reading), believed);
}

/** The temperature a drift has come to after so many hours, °C. */
export function driftedTo({ from, tau, offset }: Drift, room: Room, hours: Hours): Celsius {
  const kept = Math.exp(-hours / tau);
  return from * kept + offset * (1 - kept) + airAt(room, { tau, hours: 0, air: 0 }, hours);
}

/** The drift as stretches of a path of `hours`, one for each temperature of the room. */
export function driftPath({ from, tau, offset }: Drift, room: Room, hours: Hours): Path {
  const path: Stretch[] = [];
  let celsius = from;
  for (const [i, { hours: begins, celsius: air }] of room.entries()) {
    const begin = i === 0 ? 0 : begins;
    const end = Math.min(hours, room[i + 1]?.hours ?? hours);
    if (end <= begin) continue;
    const stretch = { from: celsius, toward: air + offset, tau };
    path.push({ ...stretch, hours: end - begin, factor: 1 });
    celsius = temperatureIn(stretch, end - begin);
  }
  return path;
}
