import { doughPct } from './dough-pct.ts';
import type { Formula } from './formula.ts';

/** What the dough weighs before its fillings go in, in shares of total flour. */
const plainDough = (formula: Formula): number => doughPct({ ...formula, fillings: [] }) / 100;

/**
 * A filling's share as its baker counts it: `pct` of total flour in % of the dough before the fillings
 * go in, where the formula counts them so; else as it is.
 */
export const countedPct = (formula: Formula, pct: number): number =>
  formula.fillingsOf === 'dough' ? pct / plainDough(formula) : pct;

/** The other way: what a baker counted, in % of total flour as it is kept. */
export const keptPct = (formula: Formula, counted: number): number =>
  formula.fillingsOf === 'dough' ? counted * plainDough(formula) : counted;
