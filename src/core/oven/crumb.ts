/** Crumb by its porosity. */
export interface Crumb {
  /** kg/m³ */
  readonly density: number;
  /** How fast heat spreads in it, m²/s. */
  readonly diffusivity: number;
}

/**
 * Crumb of a porosity of so many % (its gas by volume; bread has some 60–80): density ρ = 979 − 9.90·ε
 * and thermal diffusivity α = exp(0.01·ε − 15.25). It is what heat conducts through the solid; in an
 * oven steam carries more of it, so that a loaf behaves as with about twice that (`fit-alpha.ts`).
 * Source: Zanoni 1995 (abstract).
 *
 * @example
 * crumb(70).density // → 286
 */
export const crumb = (porosity: number): Crumb => ({
  density: 979 - 9.9 * porosity,
  diffusivity: Math.exp(0.01 * porosity - 15.25),
});
