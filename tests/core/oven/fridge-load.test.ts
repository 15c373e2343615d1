import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fridgeAdvice, fridgeHeat, type FridgeLoad } from '../../../src/core/oven/fridge-load.ts';

const load = fc.record<FridgeLoad>({
  loaves: fc.integer({ min: 1, max: 36 }),
  grams: fc.integer({ min: 150, max: 2500 }),
  from: fc.double({ min: 0, max: 35, noNaN: true }),
  to: fc.double({ min: 0, max: 15, noNaN: true }),
});

describe('heat that a fridge takes up', () => {
  it('is nothing where loaves are no warmer, and grows with loaves, mass and warmth', () => {
    fc.assert(
      fc.property(load, (one) => {
        const heat = fridgeHeat(one);
        expect(heat === 0).toBe(one.from <= one.to);
        expect(fridgeHeat({ ...one, loaves: one.loaves * 2 })).toBeCloseTo(2 * heat, 6);
        expect(fridgeHeat({ ...one, from: one.from + 1 })).toBeGreaterThanOrEqual(heat);
      }),
    );
  });

  it('is brought in by groups that hold every loaf, few of them, none empty', () => {
    fc.assert(
      fc.property(load, (one) => {
        const { groups, first, gap, key } = fridgeAdvice(one);
        expect(groups).toBeGreaterThanOrEqual(1);
        expect(groups).toBeLessThanOrEqual(4);
        expect(groups * first).toBeGreaterThanOrEqual(one.loaves);
        expect((groups - 1) * first).toBeLessThan(one.loaves);
        expect(gap > 0).toBe(groups > 1);
        expect(key === null).toBe(groups === 1);
      }),
    );
  });

  it('of a big bake wants a colder dial too, and of two loaves nothing', () => {
    const at = (loaves: number) => fridgeAdvice({ loaves, grams: 900, from: 25, to: 4 });
    expect(at(2)).toMatchObject({ key: null, groups: 1, first: 2, gap: 0 });
    expect(at(12)).toMatchObject({ key: 'stagger', groups: 3, first: 4, gap: 20 });
    expect(at(24)).toMatchObject({ key: 'staggerCold', groups: 4, first: 6, gap: 20 });
    expect(at(24).hours).toBeCloseTo(4.55, 2);
  });
});
