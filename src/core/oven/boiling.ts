import type { Celsius } from '../units.ts';

/** Metres above the sea. */
export type Metres = number;

/** The standard atmosphere's air pressure at sea level, hPa. */
const SEA_LEVEL = 1013.25;
/** hPa in a millimetre of mercury. */
const MMHG = 1.333224;
/** Antoine's constants of water, 1–100 °C, mmHg and °C. */
const ANTOINE = { a: 8.07131, b: 1730.63, c: 233.426 } as const;

/**
 * Air pressure of the standard atmosphere, hPa, at a height of so many metres, up to 11 000. Weather
 * moves it by some 2 %, half a degree of boiling.
 * Source: ICAO standard atmosphere, Doc 7488.
 *
 * @example
 * airPressure(1500) // → 845.6
 */
export const airPressure = (height: Metres): number =>
  SEA_LEVEL * (1 - 2.25577e-5 * height) ** 5.25588;

/**
 * Temperature at which water boils, °C, at a height of so many metres: no crumb gets hotter while it
 * is wet. −400 to 5 000 m.
 * Source: `airPressure`; Antoine's equation, constants as commonly tabulated for 1–100 °C.
 *
 * @example
 * boilingPoint(0) // → 100.0
 * boilingPoint(1500) // → 95.0
 * boilingPoint(3000) // → 90.0
 */
export function boilingPoint(height: Metres): Celsius {
  const { a, b, c } = ANTOINE;
  return b / (a - Math.log10(airPressure(height) / MMHG)) - c;
}
