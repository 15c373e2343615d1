import type { Minutes } from '../units.ts';
import type { Process } from './formula.ts';

/** Least and most minutes that the trade gives a stage; outside: a warning, never a clamp. */
export interface Limits {
  readonly least: Minutes;
  readonly most: Minutes;
}

/** Parts of a process that are one number of minutes. */
export type ProcessPart = Exclude<
  keyof Process,
  'touches' | 'rise' | 'fridge' | 'vessel' | 'shaping'
>;

/** Parts that every process has, whatever it bakes in. `seen` in print or common `practice`. */
const ALWAYS = {
  rest: { least: 15, most: 60 }, // seen: Calvel via McGee 15–30, others 20–60
  recovery: { least: 5, most: 15 }, // practice
} as const;

/** Retarded, or proofed warm: one of the two. */
const RETARDED = {
  counter: { least: 0, most: 90 }, // by the dough clock
  retard: { least: 480, most: 2880 }, // 8–18 h seen; more is practice
} as const;
const WARM = { warm: { least: 60, most: 210 } } as const; // seen

const SHAPING = {
  round: {
    benchRest: { least: 10, most: 30 }, // seen: Gisslen 10–20, Hamelman 5–30
    cool: { least: 60, most: 180 }, // seen
  },
  scoop: { cool: { least: 720, most: 1440 } }, // dense rye 12–24 h: seen
} as const;

/** Steam, the open minutes of a tin, and its heating: common practice, no source. */
const VESSEL = {
  pot: {
    preheat: { least: 30, most: 75 }, // practice
    lidded: { least: 15, most: 25 }, // seen
    open: { least: 10, most: 30 }, // seen
  },
  stone: {
    preheat: { least: 30, most: 75 }, // practice
    lidded: { least: 10, most: 20 }, // steam: practice
    open: { least: 10, most: 30 }, // as without the lid: seen
  },
  tin: {
    preheat: { least: 15, most: 45 }, // practice
    lidded: { least: 0, most: 0 }, // a tin has no lid
    open: { least: 30, most: 65 }, // practice
  },
} as const;

/** The limits that a process's own parts have; a part it does not use has none. */
export const limitsOf = ({
  retard,
  shaping,
  vessel,
}: Pick<Process, 'retard' | 'shaping' | 'vessel'>): Readonly<
  Partial<Record<ProcessPart, Limits>>
> => ({
  ...ALWAYS,
  ...SHAPING[shaping],
  ...(retard > 0 ? RETARDED : WARM),
  ...VESSEL[vessel],
});

/** A fold after the mix, and between touches: seen. */
export const FOLD_LIMITS: Limits = { least: 20, most: 60 };
/** A lamination, counted from the mix: practice. */
export const LAMINATE_LIMITS: Limits = { least: 30, most: 90 };
