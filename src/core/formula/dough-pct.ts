import type { Filling, Formula } from './formula.ts';

/** Water of a filling's soaker, % of total flour; 0 where it has none. */
export const soakPct = ({ pct, soak }: Pick<Filling, 'pct' | 'soak'>): number =>
  (pct * (soak?.water ?? 0)) / 100;

/**
 * What the whole dough is in % of total flour: flour, water, salt, fillings and their soakers' water.
 *
 * @example
 * doughPct({ hydration: 75, salt: 2, fillings: [{ pct: 20, soak: { water: 100 } }] }) // → 217
 */
export const doughPct = ({
  hydration,
  salt,
  fillings,
}: Pick<Formula, 'hydration' | 'salt'> & {
  readonly fillings: readonly Pick<Filling, 'pct' | 'soak'>[];
}): number => fillings.reduce((sum, f) => sum + f.pct + soakPct(f), 100 + hydration + salt);
