import type { Metres } from '../oven/boiling.ts';
import { feetOf, metresOfFeet, type Units } from '../units.ts';
import { fill } from './fill.ts';
import { between } from './measures.ts';
import type { Keyed } from './keyed.ts';

/** Whoever reads heat in °F reads heights in feet. Judgement: no unit of height is chosen by itself. */
const isInFeet = ({ heat }: Units): boolean => heat === 'F';

/**
 * A height above the sea as it is shown, in whole metres or feet.
 *
 * @example showHeight(1524, { heat: 'F', weight: 'oz' }) // '5000 ft'
 */
export const showHeight = (metres: Metres, units: Units): string =>
  isInFeet(units) ? `${Math.round(feetOf(metres))} ft` : `${Math.round(metres)} m`;

/** A height keyed in, in metres or feet; the record in metres, to 0.1 m. */
export function keyedHeight(
  { least, most }: { readonly least: Metres; readonly most: Metres },
  units: Units,
): Keyed {
  const [unit, low, high] = isInFeet(units)
    ? (['ft', Math.ceil(feetOf(least)), Math.floor(feetOf(most))] as const)
    : (['m', least, most] as const);
  return {
    unit,
    least: low,
    most: high,
    range: fill(between.to, { least: low, most: `${high} ${unit}` }),
    record: (typed) => (isInFeet(units) ? Number(metresOfFeet(typed).toFixed(1)) : typed),
  };
}
