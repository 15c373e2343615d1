import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coreAt, firstForetold, minutesToCore } from '../../../src/core/oven/core-heat.ts';
import { coreForecast, fitAlpha, type CoreReading } from '../../../src/core/oven/fit-alpha.ts';
import { crumb } from '../../../src/core/oven/crumb.ts';

const start = fc.double({ min: 2, max: 30, noNaN: true });
const grams = fc.integer({ min: 300, max: 1500 });
const alpha = fc.double({ min: 6e-7, max: 1.6e-6, noNaN: true });
const boils = fc.double({ min: 88, max: 100, noNaN: true });

/** The whole series at a ball's middle: 2·Σ(−1)^{n+1}·e^{−n²π²Fo}. */
const series = (fourier: number): number => {
  let sum = 0;
  for (let n = 1; n < 60; n += 1)
    sum += 2 * (-1) ** (n + 1) * Math.exp(-((n * Math.PI) ** 2) * fourier);
  return sum;
};

describe('the core of a loaf in the oven', () => {
  it('is as warm as the whole series has it, where one term is used at all', () => {
    fc.assert(
      fc.property(
        start,
        grams,
        alpha,
        fc.integer({ min: 1, max: 90 }),
        (from, mass, a, minutes) => {
          const ours = coreAt({ start: from, grams: mass }, minutes, a);
          const radius = Math.cbrt((3 * mass * 2.5e-6) / (4 * Math.PI));
          const fourier = (a * minutes * 60) / radius ** 2;
          const whole = 100 - (100 - from) * series(fourier);
          if (fourier < 0.2) expect(ours).toBeNull();
          else expect(Math.abs(ours! - whole)).toBeLessThan(0.1);
        },
      ),
    );
  });

  it('warms all the way, never to boiling, and later in a heavier or colder loaf', () => {
    fc.assert(
      fc.property(start, grams, alpha, boils, (from, mass, a, at) => {
        const core = (s: number, g: number, minutes: number): number =>
          coreAt({ start: s, grams: g, boils: at }, minutes, a)!;
        const long = 90;
        fc.pre(core(from, mass * 1.1, long - 5) !== null);
        expect(core(from, mass, long)).toBeGreaterThan(core(from, mass, long - 5));
        expect(core(from, mass, long)).toBeLessThan(at);
        expect(core(from, mass * 1.1, long)).toBeLessThan(core(from, mass, long));
        expect(core(from - 5, mass, long)).toBeLessThan(core(from, mass, long));
      }),
    );
  });

  it('comes to its target when it is foretold to', () => {
    fc.assert(
      fc.property(start, grams, alpha, boils, (from, mass, a, at) => {
        const baking = { start: from, grams: mass, boils: at };
        const target = at - 4;
        const minutes = minutesToCore(baking, target, a);
        expect(coreAt(baking, minutes!, a)).toBeCloseTo(target, 9);
        expect(minutesToCore(baking, at, a)).toBeNull();
        expect(minutesToCore(baking, firstForetold(baking) - 1, a)).toBeNull();
      }),
    );
  });

  it('takes minutes by mass as the law of bake times has it: the power of two thirds', () => {
    const minutes = (mass: number): number => minutesToCore({ start: 4, grams: mass }, 96, 1e-6)!;
    expect(minutes(500) / minutes(900)).toBeCloseTo((500 / 900) ** (2 / 3), 9);
  });

  it('is not asked for in the crumb’s own conduction: a loaf is about twice as fast', () => {
    expect(1e-6 / crumb(70).diffusivity).toBeGreaterThan(1.8);
    expect(1e-6 / crumb(70).diffusivity).toBeLessThan(2.4);
  });
});

describe('diffusivity learned from cores that were measured', () => {
  const reading = (a: number, minutes: number, mass: number, from = 4): CoreReading => {
    const core = coreAt({ start: from, grams: mass }, minutes, a)!;
    return { start: from, grams: mass, minutes, core };
  };

  it('is what one believed before, where nothing tells', () => {
    const none = fitAlpha([]);
    expect(none.alpha).toBeCloseTo(1e-6, 12);
    const odd: CoreReading[] = [
      { start: 4, grams: 900, minutes: 15, core: 40 },
      { start: 4, grams: 900, minutes: 40, core: 205 },
      { start: 4, grams: 900, minutes: 0, core: 90 },
    ];
    expect(fitAlpha(odd)).toEqual(none);
    expect(none.used).toBe(0);
  });

  it('goes there and back: many exact readings give the diffusivity they were made with', () => {
    fc.assert(
      fc.property(alpha, grams, start, (a, mass, from) => {
        const minutes = minutesToCore({ start: from, grams: mass }, 85, a)!;
        const fit = fitAlpha(
          Array.from({ length: 40 }, (_, i) => reading(a, minutes + i / 10, mass, from)),
        );
        expect(fit.used).toBe(40);
        expect(Math.abs(Math.log(fit.alpha / a))).toBeLessThan(0.03);
      }),
    );
  });

  it('moves toward a reading and is surer after it; a reading more never makes it less sure', () => {
    fc.assert(
      fc.property(alpha, fc.integer({ min: 1, max: 5 }), (a, count) => {
        const minutes = minutesToCore({ start: 4, grams: 900 }, 90, a)!;
        const spread = (n: number): number => {
          const fit = fitAlpha(Array.from({ length: n }, () => reading(a, minutes, 900)));
          return Math.log(fit.high / fit.low);
        };
        expect(spread(count)).toBeLessThan(spread(count - 1));
        const { alpha: fitted } = fitAlpha([reading(a, minutes, 900)]);
        // Near boiling a core tells less of how fast the loaf is than of how slow it is not.
        if (a > 1.2e-6) expect(fitted).toBeGreaterThan(1e-6);
        if (a < 8e-7) expect(fitted).toBeLessThan(1e-6);
      }),
    );
  });

  it('foretells the core with its doubt, the middle between the ends, and nothing beyond boiling', () => {
    const fit = fitAlpha([reading(1.1e-6, 40, 900), reading(1.1e-6, 35, 900)]);
    const forecast = coreForecast(fit, { start: 4, grams: 900 }, 96)!;
    expect(forecast.earliest).toBeLessThan(forecast.likely);
    expect(forecast.likely).toBeLessThan(forecast.latest);
    expect(forecast.likely).toBeCloseTo(43.2 / 1.1, 0);
    expect(coreForecast(fit, { start: 4, grams: 900, boils: 95 }, 96)).toBeNull();
  });
});
