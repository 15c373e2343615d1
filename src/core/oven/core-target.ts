import type { Celsius } from '../units.ts';
import { boilingPoint, type Metres } from './boiling.ts';

/** Core of a baked loaf at sea level, °C. Seen in print; a sign, never alone. */
const CORE = { least: 93, most: 99 } as const;
/** Water boils there at sea level, as the trade rounds it, °C. */
const BOILS = 100;

/**
 * Core temperatures of a baked loaf at a height of so many metres, °C, both ends included: 93–99 at
 * the sea, lower by as much as water boils lower; always a degree under boiling, so that none is asked
 * for that no loaf can reach. In whole degrees, rounded down.
 *
 * A sign, never alone: one loaf of 60 minutes had 99 °C a quarter of an hour early and was gummy. The
 * crust's colour and the least time decide with it (`judge-crust.ts`). It says nothing of food safety.
 * Source: 93–99 seen in print; that it falls with boiling is judgement.
 *
 * @example
 * coreTarget(0) // → { least: 93, most: 99 }
 * coreTarget(1500) // → { least: 88, most: 94 }
 */
export function coreTarget(height: Metres): { readonly least: Celsius; readonly most: Celsius } {
  const lower = Math.min(0, boilingPoint(height) - BOILS);
  // A hundredth of a degree is the fit's, and no reason to ask for a whole one less.
  const whole = (celsius: Celsius): Celsius => Math.floor(celsius + lower + 0.05);
  return { least: whole(CORE.least), most: whole(CORE.most) };
}
