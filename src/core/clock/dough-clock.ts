import type { Formula } from '../formula/formula.ts';
import type { Celsius } from '../units.ts';
import { clockDoubt, type Doubt } from './doubt.ts';
import { saltAndRye } from './salt-and-rye.ts';

/** A formula as the dough clock sees it. */
export interface DoughClock {
  /** Prefermented share of flour, 0–1. */
  readonly p: number;
  /** Wanted rise as a share of volume, 0.9 for 90 %. */
  readonly rise: number;
  /** Factor on the rate before the salt is in, and after. */
  readonly unsalted: number;
  readonly salted: number;
  /** What is doubtful about this dough at a temperature, or null. */
  doubt(celsius: Celsius): Doubt | null;
}

/** Rye share of all flour, 0–1, levain flour counted in. */
const ryeShare = ({ flours }: Formula): number =>
  flours.reduce((sum, { grain, pct }) => sum + (grain === 'rye' ? pct / 100 : 0), 0);

/**
 * The clock of a formula: p equals its prefermented share; salt and rye are shares of all flour.
 * Barley, spelt and wholemeal are taken as wheat (judgement: no figures).
 */
export function doughClock(formula: Formula): DoughClock {
  const { salt, hydration, levain, process } = formula;
  const rye = ryeShare(formula);
  return {
    p: levain.pff,
    rise: process.rise / 100,
    unsalted: saltAndRye(0, rye),
    salted: saltAndRye(salt, rye),
    doubt: (celsius) =>
      clockDoubt({ celsius, p: levain.pff, salt, rye, hydration, rise: process.rise }),
  };
}
