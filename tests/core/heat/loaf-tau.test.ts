import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loafTau } from '../../../src/core/heat/loaf-tau.ts';
import { firstTerm } from '../../../src/core/heat/sphere.ts';

describe('conduction in a ball', () => {
  it('solves the equation it is made from, for any Biot number', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 100, noNaN: true }), (biot) => {
        const { zeta, c1 } = firstTerm(biot);
        expect(1 - zeta / Math.tan(zeta)).toBeCloseTo(biot, 6);
        expect(zeta).toBeLessThan(Math.PI);
        expect(c1).toBeGreaterThan(1);
        expect(c1).toBeLessThan(2);
      }),
    );
  });
});

describe('time constant of a loaf in the fridge', () => {
  it('is the usual one for the usual loaf, and stays in the range seen from 500 to 1300 g', () => {
    expect(loafTau(900)).toBeCloseTo(2.5, 9);
    expect(loafTau(500)).toBeGreaterThan(1.8);
    expect(loafTau(1300)).toBeLessThan(3.5);
  });

  it('is longer for a bigger loaf: more than by its width, less than by its square', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 3000, noNaN: true }),
        fc.double({ min: 1.05, max: 3, noNaN: true }),
        (grams, times) => {
          const slower = loafTau(grams * times) / loafTau(grams);
          expect(slower).toBeGreaterThan(Math.cbrt(times));
          expect(slower).toBeLessThan(Math.cbrt(times) ** 2);
        },
      ),
    );
  });

  it('comes of a film between still air in the fridge and a fan', () => {
    // τ = ρ·c·R²/(k·ζ²): with the trade's 2.91 kJ/kg·K a 900 g loaf has its 2.5 h.
    const radius = Math.cbrt((3 * 0.9) / (4 * Math.PI * 1250));
    const { zeta } = firstTerm((9.6 * radius) / 0.42);
    expect((1250 * 2910 * (radius / zeta) ** 2) / 0.42 / 3600).toBeCloseTo(2.5, 1);
  });
});
