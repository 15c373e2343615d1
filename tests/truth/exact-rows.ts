import { bakeFactor } from '../../src/core/oven/fit-bake.ts';
import { loads, ovenMinutes } from '../../src/core/oven/loads.ts';
import { celsiusOf, gramsOfOunces, gramsOfPounds, kelvinsOf } from '../../src/core/units.ts';
import { rowsOf, type Row } from './row.ts';

/** Units by their definition; loads and bake times by arithmetic. */
export function exactRows(): Row[] {
  const unit = rowsOf('exact units', 'outside', 'by definition');
  const pots = rowsOf('oven', 'port', 'worked by hand');
  const mass = rowsOf('oven', 'outside', 'Jin, Wang & Wang 2021, AIP Adv. 11:115316');
  const minutes = (loaves: number, of: number) =>
    ovenMinutes(loads(loaves, of), { preheat: 60, bake: 45, recovery: 10 });
  return [
    unit('1 lb, g', gramsOfPounds(1), 453.59237),
    unit('1 oz, g', gramsOfOunces(1), 28.349523125),
    unit('450 °F, °C', celsiusOf(450), 232.22),
    unit('a difference of 8 °F, K', kelvinsOf(8), 4.44),
    pots('24 loaves, 2 pots, 60/45/10: minutes', minutes(24, 2), 710),
    pots('36 loaves, 4 pots, 60/45/10: minutes', minutes(36, 4), 545),
    mass('45 min at 900 g, at 500 g: minutes', 45 * bakeFactor(900, 500), 30.4),
  ];
}
