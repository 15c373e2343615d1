import { fill } from './fill.ts';
import { between } from './measures.ts';
import { showNumber } from './numbers.ts';
import { heatSign } from './heats.ts';
import { weightSign } from './weights.ts';
import {
  celsiusOf,
  fahrenheitOf,
  gramsOfOunces,
  ouncesOf,
  type Celsius,
  type Grams,
  type Units,
} from '../units.ts';

/** A keypad in the baker's unit; what it gives to the record is °C or grams. */
export interface Keyed {
  /** Behind the number: '°C', '°F', 'g', 'oz'. */
  readonly unit: string;
  /** What is plausible, in that unit, both ends included. */
  readonly least: number;
  readonly most: number;
  /** '41 to 104 °F' */
  readonly range: string;
  record(typed: number): number;
}

interface Span {
  readonly least: number;
  readonly most: number;
}

/** The whole numbers inside a range, so that no plausible number typed lies outside the record's. */
const inside = (span: Span, of: (n: number) => number): Span => ({
  least: Math.ceil(of(span.least) - 1e-9),
  most: Math.floor(of(span.most) + 1e-9),
});
const same = (n: number): number => n;
/** To so many decimals: a typed °F or oz makes no longer number in the record than it is worth. */
const to = (decimals: number, n: number): number => Number(n.toFixed(decimals));

const keyed = (unit: string, { least, most }: Span, record: (n: number) => number): Keyed => ({
  unit,
  least,
  most,
  range: fill(between.to, { least: showNumber(least, 2), most: `${showNumber(most, 2)} ${unit}` }),
  record,
});

/** A temperature keyed in. `usual` in °C; the record to 0.01 °C. */
export const keyedHeat = (usual: { least: Celsius; most: Celsius }, units: Units): Keyed =>
  units.heat === 'C'
    ? keyed(heatSign(units), usual, same)
    : keyed(heatSign(units), inside(usual, fahrenheitOf), (n) => to(2, celsiusOf(n)));

/** A weight keyed in, in grams or in ounces alone. `usual` in grams; the record to 0.1 g. */
export const keyedWeight = (usual: { least: Grams; most: Grams }, units: Units): Keyed =>
  units.weight === 'g'
    ? keyed(weightSign(units), usual, same)
    : keyed(weightSign(units), inside(usual, ouncesOf), (n) => to(1, gramsOfOunces(n)));
