import { firstTerm } from '../heat/sphere.ts';
import type { Celsius, Grams, Minutes } from '../units.ts';

/** Litres a kilo of dough has sprung to in the oven. Judgement; some 2.5 in print. */
const LITRES_A_KILO = 2.5;
/** Fourier number from which the first term is enough. Source: Çengel, as `firstTerm`. */
const ONE_TERM = 0.2;
/** Water boils at sea level, °C. */
export const BOILS: Celsius = 100;

/** The skin is at boiling, however hot the oven: a surface held at one temperature, Bi → ∞. */
const { zeta, c1 } = firstTerm(Infinity);

/** A loaf in the oven: how warm it went in, its dough's grams, and where water boils (100 °C). */
export interface Baking {
  readonly start: Celsius;
  readonly grams: Grams;
  readonly boils?: Celsius;
}

/** Square of the radius of a ball of that loaf's volume, m². */
const radiusSquared = (grams: Grams): number => {
  const cubicMetres = (grams / 1e6) * LITRES_A_KILO;
  return Math.cbrt((3 * cubicMetres) / (4 * Math.PI)) ** 2;
};

/** Minutes for each unit of the Fourier number, Fo = α·t/R². */
const minutesAFourier = (grams: Grams, alpha: number): Minutes => radiusSquared(grams) / alpha / 60;

/**
 * Core temperature of a loaf after so many minutes in the oven, °C: one-term conduction in a ball whose
 * skin stays at boiling, T = T_b − 2·(T_b − T₀)·e^{−π²·Fo}, Fo = α·t/R². `alpha`: effective, m²/s, about
 * 1e-6 (`fit-alpha.ts`).
 * No answer, null: Fo below 0.2 (some twenty minutes of 900 g), where one term is not enough.
 * Advice and never alone: a core that is there says nothing of a crust that is not (`judge-crust.ts`).
 * Source: Çengel, Heat and Mass Transfer, Table 4-2, Bi → ∞; the evaporation front at 100 °C and not
 * the oven's temperature: Zanoni, Peri & Pierucci 1993, J. Food Eng. 19:389, from memory; the ball is
 * judgement.
 *
 * @example
 * coreAt({ start: 4, grams: 900 }, 43, 1e-6) // → 95.9
 * coreAt({ start: 4, grams: 900 }, 10, 1e-6) // → null
 */
export function coreAt(
  { start, grams, boils = BOILS }: Baking,
  minutes: Minutes,
  alpha: number,
): Celsius | null {
  const fourier = minutes / minutesAFourier(grams, alpha);
  if (fourier < ONE_TERM) return null;
  return boils - c1 * (boils - start) * Math.exp(-(zeta ** 2) * fourier);
}

/** Core temperature at which the first term begins to be enough: below it nothing is foretold. */
export const firstForetold = ({ start, boils = BOILS }: Omit<Baking, 'grams'>): Celsius =>
  boils - c1 * (boils - start) * Math.exp(-(zeta ** 2) * ONE_TERM);

/**
 * Minutes in the oven until the core is at `target` °C, the inverse of `coreAt`.
 * No answer, null: a target that boiling water never reaches, or that comes before one term is enough.
 * Source: as `coreAt`.
 *
 * @example
 * minutesToCore({ start: 4, grams: 900 }, 96, 1e-6) // → 43.2
 * minutesToCore({ start: 4, grams: 900 }, 101, 1e-6) // → null
 */
export function minutesToCore(baking: Baking, target: Celsius, alpha: number): Minutes | null {
  const { start, grams, boils = BOILS } = baking;
  if (target >= boils || target < firstForetold(baking)) return null;
  const fourier = Math.log((c1 * (boils - start)) / (boils - target)) / zeta ** 2;
  return fourier * minutesAFourier(grams, alpha);
}
