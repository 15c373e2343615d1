import type { Grams } from '../units.ts';
import { doughPct, soakPct } from './dough-pct.ts';
import type { Formula } from './formula.ts';
import { levainShares } from './levain-shares.ts';

/** One ingredient and its exact weight, not rounded for any scale. */
export interface Amount {
  readonly id: string;
  readonly name: string;
  readonly grams: Grams;
}

/**
 * A dough taken apart, exact grams. `firstWater` is negative when the levain is too wet for it, and a
 * flour is when the levain's own mix wants more of it than there is.
 */
export interface Amounts {
  readonly dough: Grams;
  /** All flour, levain flour counted in. */
  readonly totalFlour: Grams;
  readonly levain: Grams;
  readonly levainFlour: Grams;
  readonly levainWater: Grams;
  /** Each flour less its part in the levain. */
  readonly flours: readonly Amount[];
  /** All water less the levain's. */
  readonly finalWater: Grams;
  readonly firstWater: Grams;
  readonly secondWater: Grams;
  readonly salt: Grams;
  readonly fillings: readonly Amount[];
  /** Water of each soaker, under the id and name of what soaks in it; none for what is dry. */
  readonly soakers: readonly Amount[];
}

/**
 * Baker's percentage: what a dough of `dough` grams is made of, every % of total flour, levain
 * flour counted in. Levain and its flour F_L: L = PFF·F_T·(1+h), F_L = L/(1+h), water L·h/(1+h);
 * second water = share·H·F_T; first water = H·F_T − W_L − second water. `loss` (0–1): what bowl and hands
 * take of all but the fillings; a filling's % is then of the flour that comes to the table.
 * Source: the arithmetic is exact; checked against the sheets named in tests/truth.
 * Failure: none; what comes out negative is handed back as it is, for the caller to refuse.
 */
export function amounts(formula: Formula, dough: Grams, loss = 0): Amounts {
  const { hydration, salt, fillings, levain } = formula;
  const plain = doughPct({ ...formula, fillings: [] });
  const totalFlour = (dough * 100) / (plain + (doughPct(formula) - plain) * (1 - loss));
  const levainFlour = levain.pff * totalFlour;
  const levainWater = levainFlour * levain.hydration;
  const shares = levainShares(formula.flours, levain);
  const ofFlour = (pct: number): Grams => (pct / 100) * totalFlour;
  const later = (pct: number): Grams => ofFlour(pct) * (1 - loss);
  const finalWater = ofFlour(hydration) - levainWater;
  const secondWater = formula.secondWater * ofFlour(hydration);
  return {
    dough,
    totalFlour,
    levain: levainFlour + levainWater,
    levainFlour,
    levainWater,
    flours: formula.flours.map(({ id, name, pct }, i) => ({
      id,
      name,
      grams: (pct / 100 - (shares[i] ?? 0)) * totalFlour,
    })),
    finalWater,
    firstWater: finalWater - secondWater,
    secondWater,
    salt: ofFlour(salt),
    fillings: fillings.map(({ id, name, pct }) => ({ id, name, grams: later(pct) })),
    soakers: fillings.flatMap(({ id, name, ...filling }) =>
      filling.soak ? [{ id, name, grams: later(soakPct(filling)) }] : [],
    ),
  };
}
