import { celsiusOf, gramsOfOunces, gramsOfPounds, kelvinsOf } from '../../src/core/units.ts';
import { rowsOf, type Row } from './row.ts';

/** Units by their definition. */
export function exactRows(): Row[] {
  const unit = rowsOf('exact units', 'outside', 'by definition');
  return [
    unit('1 lb, g', gramsOfPounds(1), 453.59237),
    unit('1 oz, g', gramsOfOunces(1), 28.349523125),
    unit('450 °F, °C', celsiusOf(450), 232.22),
    unit('a difference of 8 °F, K', kelvinsOf(8), 4.44),
  ];
}
