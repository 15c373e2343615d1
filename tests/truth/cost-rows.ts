import { usableCost } from '../../src/core/circle/cost.ts';
import { rowsOf, type Row } from './row.ts';

/** What a kitchen reckons of costs. */
export function costRows(): Row[] {
  const cost = rowsOf(
    'usable cost',
    'memory',
    'a culinary-school handbook’s edible-portion worked example',
  );
  return [cost('0.106 a unit as bought, 75 % usable', usableCost(0.106, 0.75), 0.1413)];
}
