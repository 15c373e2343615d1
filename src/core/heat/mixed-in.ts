import type { Celsius, Grams } from '../units.ts';
import { DOUGH_HEAT } from './heats.ts';

/**
 * Dough temperature once something of another temperature is mixed in, °C. `heat` is that of what
 * goes in, kJ/kg·K; 3.5 for wet fillings (judgement).
 * Source: heat balance.
 *
 * @example
 * mixedIn({ grams: 1700, celsius: 27 }, { grams: 200, celsius: 5, heat: 3.5 }) // → 24.27
 */
export function mixedIn(
  dough: { readonly grams: Grams; readonly celsius: Celsius },
  filling: { readonly grams: Grams; readonly celsius: Celsius; readonly heat: number },
): Celsius {
  const a = dough.grams * DOUGH_HEAT;
  const b = filling.grams * filling.heat;
  return a + b === 0 ? dough.celsius : (a * dough.celsius + b * filling.celsius) / (a + b);
}
