import fc from 'fast-check';
import type { OvenBatch } from '../../../src/core/circle/oven-batch.ts';
import type { DayHas } from '../../../src/core/circle/cap.ts';

export const WHEAT: OvenBatch = {
  bread: 'wheat',
  grams: 900,
  count: 1,
  places: 3,
  bake: 50,
  recovery: 10,
  warm: 120,
  cool: 120,
  slice: 120,
  cold: true,
};

/** Nothing said: nothing limits. */
export const BOUNDLESS: DayHas = {
  oven: null,
  fridge: null,
  bowls: { count: null, kilos: 3, litres: null },
};

/** Any batch of a bread of that name. */
export const anyBatch = (bread: string): fc.Arbitrary<OvenBatch> =>
  fc.record({
    bread: fc.constant(bread),
    grams: fc.integer({ min: 300, max: 1500 }),
    count: fc.integer({ min: 0, max: 14 }),
    places: fc.integer({ min: 1, max: 5 }),
    bake: fc.integer({ min: 30, max: 70 }),
    recovery: fc.integer({ min: 5, max: 15 }),
    warm: fc.integer({ min: 60, max: 120 }),
    cool: fc.integer({ min: 60, max: 180 }),
    slice: fc.integer({ min: 120, max: 180 }),
    cold: fc.boolean(),
  });

/** Up to three breads of one day. */
export const anyDay: fc.Arbitrary<readonly OvenBatch[]> = fc
  .tuple(anyBatch('wheat'), anyBatch('cherry'), anyBatch('barley'), fc.integer({ min: 0, max: 3 }))
  .map(([a, b, c, many]) => [a, b, c].slice(0, many));

/** A day's bounds, each said or not. */
export const anyHas: fc.Arbitrary<DayHas> = fc.record({
  oven: fc.option(fc.integer({ min: 60, max: 900 })),
  fridge: fc.option(fc.integer({ min: 1, max: 36 })),
  bowls: fc.record({
    count: fc.option(fc.integer({ min: 1, max: 12 })),
    kilos: fc.integer({ min: 1, max: 10 }),
    litres: fc.option(fc.integer({ min: 1, max: 40 })),
  }),
});
