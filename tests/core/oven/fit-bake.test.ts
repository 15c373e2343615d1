import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bakeFactor,
  COLOURING,
  fitBake,
  LEAST_LIDDED,
  massFactor,
} from '../../../src/core/oven/fit-bake.ts';

const grams = fc.integer({ min: 150, max: 2500 });
const bake = fc.record({
  lidded: fc.integer({ min: 15, max: 25 }),
  open: fc.integer({ min: 10, max: 65 }),
});
const vessel = fc.constantFrom('pot' as const, 'tin' as const, 'stone' as const);

describe('bake minutes by mass', () => {
  it('are those of the same loaf at the same mass, whatever it bakes in', () => {
    fc.assert(
      fc.property(bake, vessel, grams, (minutes, of, mass) => {
        expect(fitBake({ ...minutes, vessel: of }, mass, mass)).toEqual(minutes);
      }),
    );
  });

  it('go there and back by the same factor, and are held to 35 % either way', () => {
    fc.assert(
      fc.property(grams, grams, (a, b) => {
        expect(massFactor(a, b) * massFactor(b, a)).toBeCloseTo(1, 12);
        const held = bakeFactor(a, b);
        expect(held).toBeGreaterThanOrEqual(0.65);
        expect(held).toBeLessThanOrEqual(1.35);
        if (massFactor(a, b) > 0.65 && massFactor(a, b) < 1.35) expect(held).toBe(massFactor(a, b));
      }),
    );
    expect(45 * massFactor(900, 1500)).toBeCloseTo(63.3, 1);
    expect(45 * bakeFactor(900, 1500)).toBeCloseTo(60.75, 9);
  });

  it('are never fewer for a heavier loaf', () => {
    fc.assert(
      fc.property(bake, vessel, grams, grams, grams, (minutes, of, from, a, b) => {
        const all = (to: number): number => {
          const { lidded, open } = fitBake({ ...minutes, vessel: of }, from, to);
          return lidded + open;
        };
        expect(all(Math.max(a, b))).toBeGreaterThanOrEqual(all(Math.min(a, b)));
      }),
    );
  });

  it('keep the lid on for the least time, the last ten minutes to colour, and whole minutes', () => {
    fc.assert(
      fc.property(bake, vessel, grams, grams, (minutes, of, from, to) => {
        const { lidded, open } = fitBake({ ...minutes, vessel: of }, from, to);
        expect(lidded).toBeGreaterThanOrEqual(LEAST_LIDDED);
        expect(open).toBeGreaterThanOrEqual(COLOURING);
        expect([lidded, open].every(Number.isInteger)).toBe(true);
      }),
    );
  });

  it('give a tin no lid, and a stone its steam as it was', () => {
    fc.assert(
      fc.property(bake, grams, grams, ({ lidded, open }, from, to) => {
        expect(fitBake({ lidded: 0, open, vessel: 'tin' }, from, to).lidded).toBe(0);
        const stone = fitBake({ lidded, open, vessel: 'stone' }, from, to);
        expect(stone.lidded).toBe(lidded);
        // In all, what a pot's loaf of that mass takes, unless steam alone is already longer.
        const core = (lidded + open - COLOURING) * bakeFactor(from, to) + COLOURING;
        expect(stone.lidded + stone.open).toBe(
          Math.max(lidded + COLOURING, lidded + Math.round(core - lidded)),
        );
      }),
    );
  });
});
