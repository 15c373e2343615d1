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

/** e^{−t/τ} and what the room adds: T(hours) = start·`kept` + offset·(1 − kept) + `room`. */
const partsAt = (hours: Hours, room: Room, tau: Hours): { kept: number; room: number } => {
  let sum = 0;
  for (const [i, { hours: from, celsius }] of room.entries()) {
    const until = Math.min(hours, room[i + 1]?.hours ?? hours);
    const begin = i === 0 ? 0 : from;
    if (until <= begin) continue;
    sum += celsius * (Math.exp((until - hours) / tau) - Math.exp((begin - hours) / tau));
  }
  return { kept: Math.exp(-hours / tau), room: sum };
};

/**
 * Start and offset by least squares under their priors, for one τ, and the log of how well that τ
 * explains the readings (the marginal likelihood of a linear Gaussian model, up to a constant).
 */
const solve = (readings: readonly Measured[], room: Room, { tau, start }: Body) => {
  const [a, b] = [1 / START_SD ** 2, 1 / SD.room ** 2];
  let [xx, xy, yy, xr, yr, rr] = [a, 0, b, 0, 0, 0];
  const w = 1 / SD.reading ** 2;
  for (const { hours, celsius } of readings) {
    const { kept, room: from } = partsAt(hours, room, tau);
    const gone = 1 - kept;
    const rest = celsius - from - start * kept;
    xx += w * kept * kept;
    xy += w * kept * gone;
    yy += w * gone * gone;
    xr += w * kept * rest;
    yr += w * gone * rest;
    rr += w * rest * rest;
  }
  const det = xx * yy - xy * xy;
  const warmer = (yy * xr - xy * yr) / det;
  const offset = (xx * yr - xy * xr) / det;
  const log = -0.5 * (rr - warmer * xr - offset * yr) - 0.5 * Math.log(det);
  return { from: start + warmer, offset, log };
};

/**
 * A body's drift fitted to what was measured in it: exact over (ln τ ~ N(ln τ₀, .35²), room ± 1 K,
 * readings ± 0.3 K) on a grid of τ; τ is the posterior's mean of ln τ, start and offset the best for
 * it. Readings may come in any order. Without a reading, what was believed before.
 * Source: Newton's law; the scatter is judgement.
 */
export function fitDrift(readings: readonly Measured[], room: Room, body: Body): Drift {
  if (readings.length === 0) return { from: body.start, tau: body.tau, offset: 0 };
  const grid = Array.from({ length: POINTS }, (_, i) => -REACH + (2 * REACH * i) / (POINTS - 1));
  const logs = grid.map((z) => {
    const tau = body.tau * Math.exp(SD.lnTau * z);
    return solve(readings, room, { ...body, tau }).log - 0.5 * z * z;
  });
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const sum = weights.reduce((all, one) => all + one, 0);
  const z = grid.reduce((mean, one, i) => mean + (one * weights[i]!) / sum, 0);
  const tau = body.tau * Math.exp(SD.lnTau * z);
  const { from, offset } = solve(readings, room, { ...body, tau });
  return { from, tau, offset };
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
