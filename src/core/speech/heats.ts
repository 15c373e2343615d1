import { fill } from './fill.ts';
import { between, nameOf } from './measures.ts';
import { sayBelow, sayEnd, sayNumber, showNumber, type Unit } from './numbers.ts';
import { fahrenheitOf, type Celsius, type Units } from '../units.ts';
import { tongue, twinned } from './tongue.ts';

/** °C to 0.1, °F whole: 1 °F is about half a °C. `step` is coarser: an oven's dial. */
const inUnit = (celsius: Celsius, { heat }: Units, step = 1): number =>
  heat === 'C' ? celsius : Math.round(fahrenheitOf(celsius) / step) * step;

const SIGN: Readonly<Record<Units['heat'], string>> = { C: '°C', F: '°F' };
const NAME: Readonly<Record<Units['heat'], Unit>> = { C: 'degree', F: 'degree Fahrenheit' };

/** How the unit itself is written, behind a number that is keyed in. */
export const heatSign = ({ heat }: Units): string => SIGN[heat];

/**
 * A temperature as it is shown: °C to 0.1, °F whole.
 *
 * @example showHeat(24, { heat: 'F', weight: 'g' }) // '75 °F'
 */
export const showHeat = (celsius: Celsius, units: Units): string =>
  `${showNumber(inUnit(celsius, units))} ${SIGN[units.heat]}`;

/** An oven's dial in the baker's unit: °F by fives. */
const onDial = (celsius: Celsius, units: Units): string => showNumber(inUnit(celsius, units, 5));

/**
 * A temperature as it stands on an oven's dial, or from one to another.
 *
 * @example showDial(230, { heat: 'F', weight: 'g' }) // '445 °F'
 * @example showDial(230, { heat: 'C', weight: 'g' }, 250) // '230 to 250 °C'
 */
export const showDial = (celsius: Celsius, units: Units, most: Celsius = celsius): string => {
  const high = `${onDial(most, units)} ${SIGN[units.heat]}`;
  return most === celsius ? high : fill(between.to, { least: onDial(celsius, units), most: high });
};

/**
 * A temperature as it is said.
 *
 * @example sayHeat(24, { heat: 'F', weight: 'g' }) // 'seventy-five degrees Fahrenheit'
 */
export function sayHeat(celsius: Celsius, units: Units): string {
  const value = inUnit(celsius, units);
  return sayBelow(value, NAME[units.heat]);
}

/** °C to the half, °F whole: a difference that a kitchen probe can tell. */
const apart = (kelvins: number, { heat }: Units): number =>
  heat === 'C' ? Math.round(kelvins * 2) / 2 : Math.round(kelvins * (9 / 5));

/**
 * How far two temperatures lie apart, as it is shown; 0 or more.
 *
 * @example showApart(1.2, { heat: 'F', weight: 'g' }) // '2 °F'
 */
export const showApart = (kelvins: number, units: Units): string =>
  `${showNumber(apart(kelvins, units))} ${SIGN[units.heat]}`;

/** How far two temperatures lie apart, as it is said; 0 or more. */
export const sayApart = (kelvins: number, units: Units): string =>
  sayNumber(apart(kelvins, units), NAME[units.heat]);

/** A temperature nobody pours to a tenth: to the whole degree that is shown. */
export const wholeDegrees = (celsius: Celsius, { heat }: Units): Celsius =>
  heat === 'C' ? Math.round(celsius) : celsius;

interface Heat {
  readonly least?: Celsius;
  readonly most: Celsius;
  /** °F are shown in steps of this. */
  readonly step?: number;
}

/**
 * Heats that sentences of the trade name, °C. A template writes the name, so that its unit follows
 * the baker's; an oven's dial and what a packet states go by 5 °F. Sources: pot in at 260, 240 the
 * middle of 230–250 at loading (seen in print); 220 for a flat tray (common practice, no source); parchment's usual rating 215–230 (seen); fridge 5 and a warm room 32 the usual food rule
 * (USDA); bag under 35 (common practice, no source).
 */
const HEATS = {
  potHeat: { most: 260, step: 5 },
  bakeHeat: { most: 240, step: 5 },
  trayHeat: { most: 220, step: 5 },
  parchmentHeat: { least: 215, most: 230, step: 5 },
  fridgeHeat: { most: 5 },
  warmRoom: { most: 32 },
  bagHeat: { most: 35 },
} as const satisfies Readonly<Record<string, Heat>>;

/** Both ends of a span, their unit once. */
function sayUpTo(least: number, most: number, unit: Unit): string {
  const end = (n: number): string => (tongue() === 'en' ? sayEnd(n) : showNumber(n));
  return `${fill(between.to, { least: end(least), most: end(most) })} ${nameOf(unit, most)}`;
}

const write = (one: (heat: Heat) => string): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(HEATS).map(([name, heat]) => [name, one(heat)]));

/** The trade's heats by name, in digits: `{potHeat}` is '260 °C' or '500 °F'. */
export const showHeats = (units: Units): Readonly<Record<string, string>> =>
  write(({ least, most, step }) => {
    const high = `${showNumber(inUnit(most, units, step))} ${SIGN[units.heat]}`;
    if (least === undefined) return high;
    return fill(between.to, { least: showNumber(inUnit(least, units, step)), most: high });
  });

/** The trade's heats by name, in words; both ends of a span once, or it would be too long to hold in mind. */
export const sayHeats = (units: Units): Readonly<Record<string, string>> =>
  write(({ least, most, step }) => {
    const high = inUnit(most, units, step);
    if (least === undefined) return sayNumber(high, NAME[units.heat]);
    const low = inUnit(least, units, step);
    return twinned(() => sayUpTo(low, high, NAME[units.heat]));
  });
