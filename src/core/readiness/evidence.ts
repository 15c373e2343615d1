import { proofIndex } from '../clock/proof-index.ts';
import { rise } from '../clock/rise.ts';
import type { Celsius, Hours } from '../units.ts';

/** What stood behind a reading: the clock's hours till then, the dough's p, its temperature. */
export interface Seen {
  /** Θ of the body that was looked at (a jar has its own), h at 26 °C. */
  readonly theta: Hours;
  readonly p: number;
  readonly celsius: Celsius;
}

/** Scatter of a rise read off a tub or a jar, % points. Judgement, tried on synthetic doughs. */
export const RISE_SD = 10;
/** Above this the model extrapolates: a reading is kept but not used, %. Judgement. */
export const MOST_RISE = 110;

const risePct = (vigour: number, { theta, p, celsius }: Seen): number =>
  100 * rise(vigour * theta, p, celsius);

const clamp = (least: number, x: number, most: number): number =>
  Math.min(most, Math.max(least, x));

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));

/** Log likelihood of a rise of `percent` at vigour v; 0 (no evidence) above 110 %. */
export const riseEvidence =
  (percent: number, seen: Seen) =>
  (vigour: number): number =>
    percent > MOST_RISE ? 0 : -0.5 * ((percent - risePct(vigour, seen)) / RISE_SD) ** 2;

/** Half the step between two pictures of a rise, % points. */
const HALF_STEP = 12.5;

/**
 * Log likelihood of a rise told as `percent` or more: a dough left long is told "doubled" however far
 * it went. The normal distribution's sum, nearly, by a logistic curve.
 */
export const riseAtLeast =
  (percent: number, seen: Seen) =>
  (vigour: number): number => {
    const over = (risePct(vigour, seen) - (percent - HALF_STEP)) / RISE_SD;
    return Math.log(clamp(0.02, logistic(1.702 * over), 1));
  };

/** Log likelihood of a domed edge with bubbles (or of none). Source: judgement. */
export const domeEvidence =
  (domed: boolean, seen: Seen) =>
  (vigour: number): number => {
    const yes = clamp(0.02, logistic((risePct(vigour, seen) - 60) / 12), 0.98);
    return Math.log(domed ? yes : 1 - yes);
  };

/** A dent's answer: springs back at once, slowly with a slight dent left, stays dented. */
export type Dent = 'springs' | 'slow' | 'stays';

/** Probability of each answer of a dent at proof index q; they sum to 1. Source: judgement. */
export function dentOdds(q: number): Readonly<Record<Dent, number>> {
  const a = logistic((0.85 - q) / 0.08);
  const c = logistic((q - 1.25) / 0.08);
  const odds = (share: number): number => 0.97 * share + 0.01;
  return { springs: odds(a), slow: odds(1 - a - c), stays: odds(c) };
}

/**
 * Log likelihood of a dent at vigour v: `grown` is the growth at the end of bulk, Θ counts from there.
 * Proof only.
 */
export const dentEvidence =
  (dent: Dent, grown: number, { theta, p, celsius }: Seen) =>
  (vigour: number): number =>
    Math.log(dentOdds(proofIndex(grown + vigour * theta, p, celsius))[dent]);
