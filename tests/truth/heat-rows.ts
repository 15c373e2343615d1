import { iceFor } from '../../src/core/heat/ice.ts';
import { mixedIn } from '../../src/core/heat/mixed-in.ts';
import { waterByMultiplier } from '../../src/core/heat/multiplier.ts';
import { waterByBalance } from '../../src/core/heat/water.ts';
import { celsiusOf } from '../../src/core/units.ts';
import { rowsOf, type Row } from './row.ts';

/** Water for a wanted dough temperature, ice and fillings. */
export function heatRows(): Row[] {
  const balance = rowsOf('heat of a mix', 'port', 'heat balance, worked out apart');
  const rule = rowsOf('water by rule', 'outside', '');
  const ice = rowsOf('ice', 'outside', 'Koerner’s table, a pound of water');
  const water = (hydration: number): number =>
    waterByBalance(
      {
        wanted: 25,
        flour: { grams: 1000, celsius: 20 },
        levain: { flour: 0, water: 0, celsius: 20 },
        water: 700,
      },
      { hydration },
    );
  const iced = (from: number, to: number): number =>
    iceFor({ water: 1, tap: celsiusOf(from), wanted: celsiusOf(to), ice: 0 });
  return [
    balance('water, 70 % at 20 °C to 25 °C, no hydration heat', water(0), 28.14),
    balance('the same with 15 kJ/kg', water(15), 23.02),
    balance(
      '200 g at 5 °C into 1.7 kg at 27 °C',
      mixedIn({ grams: 1700, celsius: 27 }, { grams: 200, celsius: 5, heat: 3.5 }),
      24.27,
    ),
    rule('3 · 75 − 65 − 65 − 8', waterByMultiplier(75, [65, 65], 8), 87, { source: 'SFBI' }),
    rule('4 · 75 − 3 · 71 − 20', waterByMultiplier(75, [71, 71, 71], 20), 67, {
      source: 'Cook’s Illustrated',
    }),
    rule('3 · 80 − 65 − 75 − 35', waterByMultiplier(80, [65, 75], 35), 65, { source: 'Lehmann' }),
    rule('3 · 25 − 20 − 20, in °C and with no friction', waterByMultiplier(25, [20, 20], 0), 35, {
      source: 'the same rule',
    }),
    ice(
      '40 kg, 20 → 10 °C, of each',
      iceFor({ water: 40, tap: 20, wanted: 10, ice: 0 }) / 40,
      0.1,
      {
        source: 'heat balance, ice replacing water',
      },
    ),
    ice('60 → 40 °F', iced(60, 40), 0.115),
    ice('80 → 50 °F', iced(80, 50), 0.155),
  ];
}
