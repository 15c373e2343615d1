/**
 * Units of the core: grams, °C, hours for rates, minutes for lengths that a baker says aloud,
 * milliseconds since the epoch for instants. Other units are converted at the edge, here, and
 * nowhere else.
 */

/** Grams. */
export type Grams = number;
/** Degrees Celsius (a temperature, not a difference). */
export type Celsius = number;
/** Minutes, a length of time. */
export type Minutes = number;
/** Hours, a length of time. */
export type Hours = number;
/** Milliseconds since the Unix epoch. */
export type Instant = number;

/** One minute in milliseconds. */
export const MINUTE = 60_000;
/** One hour in milliseconds. */
export const HOUR = 3_600_000;
