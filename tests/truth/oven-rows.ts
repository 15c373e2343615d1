import { airPressure, boilingPoint } from '../../src/core/oven/boiling.ts';
import { firstTerm } from '../../src/core/heat/sphere.ts';
import { crumb } from '../../src/core/oven/crumb.ts';
import { coreForecast, fitAlpha } from '../../src/core/oven/fit-alpha.ts';
import { fridgeHeat } from '../../src/core/oven/fridge-load.ts';
import { bakeFactor, massFactor } from '../../src/core/oven/fit-bake.ts';
import { moreMinutes } from '../../src/core/oven/more-minutes.ts';
import { loadPlan } from '../../src/core/oven/load-plan.ts';
import { loads, ovenMinutes } from '../../src/core/oven/loads.ts';
import { celsiusOf, metresOfFeet, MINUTE } from '../../src/core/units.ts';
import { rowsOf, type Row } from './row.ts';

/** Minutes of an oven that loads in no time, by arithmetic and by the plan. */
function loadRows(): Row[] {
  const pots = rowsOf('oven', 'port', 'worked by hand');
  const minutes = (loaves: number, of: number) =>
    ovenMinutes(loads(loaves, of), { preheat: 60, bake: 45, recovery: 10 });
  const planned = (count: number, of: number): number => {
    const plan = loadPlan({
      loaves: Array.from({ length: count }, (_, i) => ({ id: `loaf-${i}`, grams: 900 })),
      pots: Array.from({ length: of }, (_, i) => ({ id: `pot-${i}`, holds: null })),
      minutes: { preheat: 60, lidded: 20, open: 25, recovery: 10, loadMinutes: 0 },
      now: 0,
    });
    return (plan.lastOut ?? NaN) / MINUTE;
  };
  return [
    pots('24 loaves, 2 pots, 60/45/10: minutes', minutes(24, 2), 710),
    pots('36 loaves, 4 pots, 60/45/10: minutes', minutes(36, 4), 545),
    pots('24 loaves in 2 pots, planned loaf by loaf: minutes', planned(24, 2), 710),
    pots('36 loaves in 4 pots, planned loaf by loaf: minutes', planned(36, 4), 545),
  ];
}

/** A bake of 45 min at 900 g, all of it core-driven. */
function massRows(): Row[] {
  const law = 't₂ = t₁(m₂/m₁)^⅔ of Jin, Wang & Wang 2021, AIP Adv. 11:115316, worked by hand';
  const mass = rowsOf('oven', 'port', law);
  return [
    mass('45 min at 900 g, at 500 g: minutes', 45 * massFactor(900, 500), 30.4),
    mass('at 1500 g, before it is held: minutes', 45 * massFactor(900, 1500), 63.3),
    mass('at 1500 g, held to + 35 %: minutes', 45 * bakeFactor(900, 1500), 60.75, {
      mark: 'judgement',
      source: 'the limit of 35 %',
    }),
  ];
}

/** Height above the sea: the standard atmosphere, and water that boils in it. */
function heightRows(): Row[] {
  const pressure = rowsOf('air pressure', 'memory', 'ICAO standard atmosphere, table, from memory');
  const boils = rowsOf('boiling', 'memory', 'CRC Handbook, water by height, from memory');
  const steam = 'saturated steam tables (IAPWS): 84.6 kPa at 95 °C, 70.2 at 90 °C, from memory';
  return [
    pressure('at sea level, hPa', airPressure(0), 1013.25),
    pressure('at 1000 m, hPa', airPressure(1000), 898.75),
    pressure('at 1500 m, hPa', airPressure(1500), 845.56),
    pressure('at 2000 m, hPa', airPressure(2000), 794.95),
    pressure('at 3000 m, hPa', airPressure(3000), 701.09),
    boils('water boils at 0 m, °C', boilingPoint(0), 100),
    boils('at 1500 m, °C', boilingPoint(1500), 95, { source: steam }),
    boils('at 3000 m, °C', boilingPoint(3000), 90, { source: steam }),
    ...[
      [2000, 208],
      [5000, 203],
      [7500, 198],
      [10_000, 194],
    ].map(([feet, fahrenheit]) =>
      boils(
        `at ${feet} ft, °C`,
        boilingPoint(metresOfFeet(feet!)),
        [celsiusOf(fahrenheit! - 0.5), celsiusOf(fahrenheit! + 0.5)],
        { source: 'USDA FSIS, cooking at high altitude, whole °F, from memory' },
      ),
    ),
  ];
}

/** Crumb, a ball whose skin stays at boiling, and the diffusivity fitted to a loaf. */
function coreRows(): Row[] {
  const zanoni = 'Zanoni 1995 (abstract), its equations worked by hand';
  const solid = rowsOf('crumb', 'port', zanoni);
  const cengel = 'Çengel, Heat and Mass Transfer, Table 4-2 (sphere)';
  const conduction = rowsOf('conduction', 'outside', cengel);
  const usual = '900 g from 4 °C done in 43 min: about 1e-6, common practice, no source';
  const fitted = rowsOf('effective diffusivity', 'practice', usual);
  const loaf = { start: 4, grams: 900 };
  const reading = { ...loaf, minutes: 43, core: 96 };
  const fifty = Array.from({ length: 50 }, () => reading);
  const many = fitAlpha(fifty);
  return [
    solid('crumb of 70 % pores, kg/m³', crumb(70).density, 286),
    solid('its diffusivity, 1e-7 m²/s', crumb(70).diffusivity * 1e7, 4.8),
    conduction('sphere, Bi → ∞: ζ₁', firstTerm(Infinity).zeta, 3.1416),
    conduction('sphere, Bi → ∞: C₁', firstTerm(Infinity).c1, 2),
    fitted('α of one such loaf, 1e-6 m²/s', fitAlpha([reading]).alpha * 1e6, [0.9, 1.1]),
    fitted('α of fifty such loaves, 1e-6 m²/s', many.alpha * 1e6, [0.9, 1.1]),
    rowsOf('oven', 'port', '43 min read, fifty times, and foretold')(
      'minutes to 96 °C, fitted to fifty loaves that had it after 43',
      coreForecast(many, loaf, 96)?.likely ?? NaN,
      [42, 44],
    ),
    rowsOf('oven', 'port', 'R²/(α·π²) = 11.2 min, times ln(12/7), worked by hand')(
      'minutes from a core of 88 °C to 93 °C, 900 g, fitted to the same fifty',
      moreMinutes({ ...loaf, minutes: 31, core: 88 }, fifty, 93, { lidded: 18, open: 20 }) ?? NaN,
      6,
    ),
  ];
}

/** Heat of a fridge full of loaves. */
function fridgeRows(): Row[] {
  const heat = rowsOf('heat of a fridge', 'port', 'm·cp·ΔT, worked by hand');
  const load = { loaves: 24, grams: 900, from: 25, to: 4 };
  return [
    heat('24 × 900 g, 25 → 4 °C, cp 2.8, kJ', fridgeHeat(load, 2.8), 1270),
    heat('the same, cp 2.91, kJ', fridgeHeat(load), 1320),
  ];
}

/** Loads, minutes by mass, height, the core and the fridge: what an oven is reckoned by. */
export const ovenRows = (): Row[] => [
  ...loadRows(),
  ...massRows(),
  ...heightRows(),
  ...coreRows(),
  ...fridgeRows(),
];
