import { ovenBatch, type OvenBatch } from '../../src/core/circle/oven-batch.ts';
import { roomFor } from '../../src/core/circle/cap.ts';
import { bakingMinutes, ovenDay } from '../../src/core/circle/oven-day.ts';
import { ANY_POT } from '../../src/core/kitchen/equipment.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { rowsOf, type Row } from './row.ts';

const BATCH: OvenBatch = {
  bread: 'any',
  grams: 900,
  count: 7,
  places: 3,
  bake: 50,
  recovery: 10,
  warm: 120,
  cool: 120,
  slice: 120,
  cold: true,
};

/** Loads, the hour of fetching and the cap of a bake day, by hand. */
export function circleOvenRows(): Row[] {
  const day = rowsOf('oven', 'port', 'worked by hand');
  const loaded = (count: number, places: number): OvenBatch => ({
    ...BATCH,
    count,
    places,
    bake: 45,
  });
  const seven = ovenDay([BATCH], 8 * HOUR);
  const twelve = rowsOf('oven', 'practice', 'bakers at home name 5–6 h for 12 loaves in 2 pots');
  const hours = { fridge: null, bowls: { count: null, kilos: 3, litres: null } };
  const large = ovenBatch(
    shippedFormula('lane-wheat'),
    { pots: [ANY_POT], tins: 2, stones: 1 },
    1,
    1500,
  );
  return [
    day('7 loaves, 3 pots, 50 + 10, loaded at 480: last out', seven.lastOut! / MINUTE, 650),
    day('the same with two hours of cooling: cool', seven.coolAt! / MINUTE, 770),
    day('24 in 2 pots, 60/45/10: minutes', 60 + bakingMinutes([loaded(24, 2)]), 710),
    day('36 in 4 pots, 60/45/10: minutes', 60 + bakingMinutes([loaded(36, 4)]), 545),
    day(
      'loaves in 3 pots, 50 + 10, in 240 min',
      roomFor(BATCH, [], { ...hours, oven: 240 }).more!,
      12,
    ),
    day(
      'loaves in 3 pots, 50 + 10, in 229 min',
      roomFor(BATCH, [], { ...hours, oven: 229 }).more!,
      9,
    ),
    twelve('12 in 2 pots, 45 + 10: hours', bakingMinutes([loaded(12, 2)]) / 60, [5, 6]),
    rowsOf('oven', 'port', '18 × 1.35 = 24.3 and 10 × 1.35 + 10 = 23.5, whole minutes')(
      '18 + 20 min at 900 g: a piece of 1500 g in the oven, minutes',
      large.bake,
      48,
    ),
  ];
}
