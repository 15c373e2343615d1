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

/** What the baker reads heats and weights in. The core itself knows °C and grams only. */
export interface Units {
  readonly heat: 'C' | 'F';
  readonly weight: 'g' | 'oz';
}

/** Metres in a foot, exact by definition. */
const FOOT = 0.3048;

/**
 * Feet to metres, exact by definition.
 *
 * @example
 * metresOfFeet(5000) // → 1524
 */
export const metresOfFeet = (feet: number): number => feet * FOOT;

/**
 * Metres to feet, exact by definition.
 *
 * @example
 * feetOf(1524) // → 5000
 */
export const feetOf = (metres: number): number => metres / FOOT;

/** One minute in milliseconds. */
export const MINUTE = 60_000;
/** One hour in milliseconds. */
export const HOUR = 3_600_000;

/** One day of twenty-four hours in milliseconds. */
export const DAY = 24 * HOUR;

/** Grams in a pound and in an ounce, avoirdupois: exact, by definition. */
const POUND: Grams = 453.59237;
const OUNCE: Grams = POUND / 16;

/**
 * Pounds to grams, exact by definition.
 *
 * @example
 * gramsOfPounds(1) // → 453.59237
 */
export const gramsOfPounds = (pounds: number): Grams => pounds * POUND;

/**
 * Ounces to grams, exact by definition.
 *
 * @example
 * gramsOfOunces(1) // → 28.349523125
 */
export const gramsOfOunces = (ounces: number): Grams => ounces * OUNCE;

/**
 * Grams to ounces, exact by definition.
 *
 * @example
 * ouncesOf(453.59237) // → 16
 */
export const ouncesOf = (grams: Grams): number => grams / OUNCE;

/**
 * A temperature in °F to °C.
 *
 * @example
 * celsiusOf(450) // → 232.22
 */
export const celsiusOf = (fahrenheit: number): Celsius => (fahrenheit - 32) * (5 / 9);

/**
 * A temperature in °C to °F.
 *
 * @example
 * fahrenheitOf(5) // → 41
 */
export const fahrenheitOf = (celsius: Celsius): number => celsius * (9 / 5) + 32;

/**
 * A temperature difference in °F to °C (= K): by 5/9 alone, without the 32.
 *
 * @example
 * kelvinsOf(8) // → 4.44
 */
export const kelvinsOf = (fahrenheitDifference: number): number => fahrenheitDifference * (5 / 9);
