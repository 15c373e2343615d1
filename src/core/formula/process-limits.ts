import type { Minutes } from '../units.ts';
import type { Process } from './formula.ts';

/** Least and most minutes that the trade gives a stage; outside: a warning, never a clamp. */
export interface Limits {
  readonly least: Minutes;
  readonly most: Minutes;
}

/** Parts of a process that are one number of minutes. `seen` in print or common `practice`. */
export const PROCESS_LIMITS: Readonly<
  Record<Exclude<keyof Process, 'touches' | 'rise' | 'fridge'>, Limits>
> = {
  rest: { least: 15, most: 60 }, // seen: Calvel via McGee 15–30, others 20–60
  benchRest: { least: 10, most: 30 }, // seen: Gisslen 10–20, Hamelman 5–30
  counter: { least: 0, most: 90 }, // by the dough clock
  retard: { least: 480, most: 2880 }, // 8–18 h seen; more is practice
  preheat: { least: 30, most: 75 }, // practice
  lidded: { least: 15, most: 25 }, // seen
  open: { least: 10, most: 30 }, // seen
  recovery: { least: 5, most: 15 }, // practice
  cool: { least: 60, most: 180 }, // seen
};

/** A fold after the mix, and between touches: seen. */
export const FOLD_LIMITS: Limits = { least: 20, most: 60 };
/** A lamination, counted from the mix: practice. */
export const LAMINATE_LIMITS: Limits = { least: 30, most: 90 };
