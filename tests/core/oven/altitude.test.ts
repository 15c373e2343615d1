import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airPressure, boilingPoint } from '../../../src/core/oven/boiling.ts';
import { coreTarget } from '../../../src/core/oven/core-target.ts';

const height = fc.double({ min: -400, max: 5000, noNaN: true });

describe('height above the sea', () => {
  it('lowers the air’s pressure and the boiling point all the way', () => {
    fc.assert(
      fc.property(height, height, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(airPressure(high)).toBeLessThan(airPressure(low));
        expect(boilingPoint(high)).toBeLessThan(boilingPoint(low));
      }),
    );
  });

  it('never has a core asked for that water cannot reach, nor a window that is upside down', () => {
    fc.assert(
      fc.property(height, (metres) => {
        const { least, most } = coreTarget(metres);
        expect(most).toBeLessThan(boilingPoint(metres) - 0.9);
        expect(least).toBeLessThan(most);
        expect(least).toBeLessThanOrEqual(93);
        expect(Number.isInteger(least) && Number.isInteger(most)).toBe(true);
      }),
    );
  });

  it('leaves the window as printed at the sea, and never raises it below', () => {
    expect(coreTarget(0)).toEqual({ least: 93, most: 99 });
    expect(coreTarget(-400)).toEqual({ least: 93, most: 99 });
    // A demand of 98 ends a few hundred metres up.
    expect(coreTarget(700).most).toBeLessThan(98);
  });
});
