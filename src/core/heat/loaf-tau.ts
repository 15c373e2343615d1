import { TAU } from '../clock/stretch.ts';
import type { Grams, Hours } from '../units.ts';
import { firstTerm } from './sphere.ts';

/** Gas-free dough: W/m·K (weak evidence), kg/m³ (from memory). */
const DOUGH = { conductivity: 0.42, density: 1250 } as const;
/** W/m²K at which a loaf of `USUAL` g has the usual τ: 9.6, within what still cold air does. */
const FILM = 9.6;
const USUAL: Grams = 900;

/** ζ²/R² of a loaf taken for a ball: what its rate of cooling goes by, 1/m². */
const cooling = (grams: Grams): number => {
  const radius = Math.cbrt((3 * (grams / 1000)) / (4 * Math.PI * DOUGH.density));
  return (firstTerm((FILM * radius) / DOUGH.conductivity).zeta / radius) ** 2;
};

/**
 * Time constant of a loaf of so many grams in the fridge, h: 2.5 at 900 g (common practice, no source),
 * longer for a bigger one as conduction in a ball has it. grams > 0.
 * Source: Çengel, Heat and Mass Transfer, Table 4-2; the ball is judgement.
 *
 * @example
 * loafTau(900) // → 2.5
 * loafTau(500) // → 1.97
 */
export const loafTau = (grams: Grams): Hours => (TAU.fridgeLoaf * cooling(USUAL)) / cooling(grams);
