import type { Celsius, Hours } from '../units.ts';
import { growthForRise, rise } from './rise.ts';

/** The proof index is the dough's growth in volumes over this. Common practice, no source. */
const PROOF_FULL = 3;

/**
 * Where the proof index q stands: ready at `full`, from `least` to `most`; past `past` it is over.
 * Common practice, no source.
 */
export const PROOF_WINDOW = { least: 0.85, full: 1, most: 1.25, past: 1.35 } as const;

/**
 * How far apart the published growth curves and the clock are in the fridge: a cold q is known to
 * this at best, either way. Source: cardinal temperatures of sourdough yeast as quoted at
 * nyx.net/~dgreenw/whatfactorsaffectmicrobial.html give q .78–1.11 where the clock says .96.
 */
const COLD_DOUBT = 0.17;
/** Hours in the cold that this is for: it gathers with them. Judgement, the curves were read at 12 h. */
const DOUBTED: Hours = 12;

/**
 * Doubt of a cold proof index, either way, after so many hours in the fridge or since the loaf was
 * last seen there. hours ≥ 0.
 *
 * @example
 * coldDoubt(6) // → 0.085
 */
export const coldDoubt = (hours: Hours): number => COLD_DOUBT * Math.min(1, hours / DOUBTED);

/**
 * Proof index after growth m: an index, not a volume, since no loaf is measured at three times its
 * size. Beyond a rise of 1.1 the model extrapolates. m ≥ 0, p above 0.
 *
 * @example
 * proofIndex(6, 0.08257, 24) // → 1.01919
 */
export const proofIndex = (m: number, p: number, celsius: Celsius): number =>
  rise(m, p, celsius) / PROOF_FULL;

/** Growth m at which the proof index is q, the inverse of `proofIndex`. q ≥ 0. */
export const growthForProof = (q: number, p: number, celsius: Celsius): number =>
  growthForRise(q * PROOF_FULL, p, celsius);
