import { airPressure, boilingPoint } from '../../src/core/oven/boiling.ts';
import { bakeFactor, massFactor } from '../../src/core/oven/fit-bake.ts';
import { loadPlan } from '../../src/core/oven/load-plan.ts';
import { loads, ovenMinutes } from '../../src/core/oven/loads.ts';
import { MINUTE } from '../../src/core/units.ts';
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
  ];
}

/** Loads, minutes by mass, height: what an oven is reckoned by. */
export const ovenRows = (): Row[] => [...loadRows(), ...massRows(), ...heightRows()];
