import { growthForProof, PROOF_WINDOW } from '../clock/proof-index.ts';
import { readyCurve } from '../clock/hours-until.ts';
import type { Path } from '../clock/stretch.ts';
import { loafTau } from '../heat/loaf-tau.ts';
import type { Celsius, Grams, Hours, Minutes } from '../units.ts';

/** A loaf that may stand out: what the dough clock knows of it. */
export interface StandingLoaf {
  /** Proof index now. */
  readonly q: number;
  /** Prefermented share of flour, 0–1; factor of salt and rye; vigour of the starter. */
  readonly p: number;
  readonly factor: number;
  readonly vigour: number;
  readonly grams: Grams;
  /** Of the loaf, and of the room it warms up in. */
  readonly celsius: Celsius;
  readonly room: Celsius;
}

/** No loaf is left standing longer, h. Judgement, as where it stands out by the plan. */
const MOST: Hours = 12;

/**
 * Minutes until a loaf that stands in the room is at proof index 1, by the dough clock as it warms; 0
 * where it is there, null where it is not within twelve hours.
 * Source: the dough clock; the loaf warms with the time constant of its mass.
 *
 * @example
 * warmUpMinutes({ q: 1.1, p: 0.08, factor: 0.9, vigour: 1, grams: 900, celsius: 4, room: 22 }) // → 0
 */
export function warmUpMinutes(loaf: StandingLoaf): Minutes | null {
  const { q, p, factor, vigour, grams, celsius, room } = loaf;
  if (q >= PROOF_WINDOW.full) return 0;
  const stretch = { hours: MOST, from: celsius, toward: room, tau: loafTau(grams), factor };
  const path: Path = [stretch];
  const grown = growthForProof(q, p, celsius);
  const hours = readyCurve(
    path,
    0,
    MOST,
    (at) => growthForProof(PROOF_WINDOW.full, p, at) - grown,
  )(vigour);
  return hours === null ? null : hours * 60;
}
