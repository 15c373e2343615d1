import type { Celsius, Instant, Units } from '../../units.ts';

/** How a plot writes what is not its own to know: the wall's dates, the baker's units. */
export interface ToldIn {
  /** '3 May 2031'. */
  readonly date: (at: Instant) => string;
  readonly units: Units;
}

/** A reading of a temperature in whole degrees is fine enough for a season. */
export const wholly = (celsius: Celsius): Celsius => Math.round(celsius);
