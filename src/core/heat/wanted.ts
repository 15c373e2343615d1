import type { Formula } from '../formula/formula.ts';
import type { Celsius } from '../units.ts';

/**
 * Dough temperature aimed at where a formula names none, °C. Printed worked examples want 75 °F
 * (SFBI; Cook’s Illustrated) to 80 °F (Lehmann), 23.9–26.7 °C; their middle. Judgement.
 */
export const USUAL_DOUGH: Celsius = 25;

/**
 * Levain just fed, °C: the low half of the 24–27 °C it is kept at. Source: seen in print; to feed it
 * to that warmth is judgement.
 */
export const USUAL_LEVAIN: Celsius = 25;

/** What the dough of a formula is to come out at, unless the baker says otherwise for a bake. */
export const wantedDough = ({ doughCelsius }: Pick<Formula, 'doughCelsius'>): Celsius =>
  doughCelsius ?? USUAL_DOUGH;
