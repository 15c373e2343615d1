import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  niceSpan,
  niceStep,
  scaleOf,
  ticksIn,
  timeTicks,
} from '../../../../src/core/log/chart/axis.ts';
import { instantOf, wallTime } from '../../../../src/core/day/plan/wall-clock.ts';
import { DAY, HOUR } from '../../../../src/core/units.ts';

const midnightIn = (zone: string) => (at: number) =>
  instantOf({ ...wallTime(at, zone), hour: 0, minute: 0 }, zone, 'earlier');
const UTC = midnightIn('UTC');

const value = fc.integer({ min: -1e7, max: 1e7 }).map((n) => n / 1000);

describe('a scale', () => {
  it('puts both ends where they belong, and all else between', () => {
    fc.assert(
      fc.property(value, value, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        const scale = scaleOf([a, b], [100, 10]);
        expect(a !== b || scale(a) === 55).toBe(true);
        if (a === b) return;
        expect(scale(a)).toBeCloseTo(100);
        expect(scale(b)).toBeCloseTo(10);
        const between = scale(a + share * (b - a));
        expect(between).toBeGreaterThanOrEqual(10 - 1e-6);
        expect(between).toBeLessThanOrEqual(100 + 1e-6);
      }),
    );
  });
});

describe('ticks of numbers', () => {
  it('are steps of 1, 2 or 5 tens, in the span, and no more than fit', () => {
    fc.assert(
      fc.property(
        value,
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (from, span, most) => {
          const ticks = ticksIn([from, from + span], most);
          expect(ticks.length).toBeLessThanOrEqual(Math.max(2, most));
          const step = niceStep(span, Math.max(1, most - 1));
          expect([1, 2, 5]).toContain(Number(step.toExponential().charAt(0)));
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(from - step * 1e-6);
            expect(tick).toBeLessThanOrEqual(from + span + step * 1e-6);
            expect(Math.abs(tick / step - Math.round(tick / step))).toBeLessThan(1e-6);
          }
        },
      ),
    );
  });

  it('hold all values in their span, with room where there is but one', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 8 }), (values) => {
        const [from, to] = niceSpan(values, 5, 2);
        expect(from).toBeLessThanOrEqual(Math.min(...values));
        expect(to).toBeGreaterThanOrEqual(Math.max(...values));
        expect(to - from).toBeGreaterThanOrEqual(2 - 1e-6);
      }),
    );
    expect(niceSpan([], 4)).toEqual([0, 1]);
  });
});

describe('ticks of time', () => {
  it('stand on parts of the day, in order, in the span, and no more than fit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 * 24 * 60 }),
        fc.integer({ min: 1, max: 90 * 24 * 60 }),
        fc.integer({ min: 1, max: 12 }),
        (from, minutes, most) => {
          const span = [from * 60_000, (from + minutes) * 60_000] as const;
          const ticks = timeTicks(span, most, UTC);
          expect(ticks.length).toBeLessThanOrEqual(most);
          for (const [n, tick] of ticks.entries()) {
            expect(tick).toBeGreaterThanOrEqual(span[0]);
            expect(tick).toBeLessThanOrEqual(span[1]);
            expect(tick % (5 * 60_000)).toBe(0);
            if (n > 0) expect(tick).toBeGreaterThan(ticks[n - 1]!);
          }
        },
      ),
    );
  });

  it('begin anew at each midnight where the clock changes', () => {
    const zone = 'Europe/Berlin';
    // The last Sunday of March 2031 has 23 hours there, the last of October 25.
    for (const [month, day] of [
      [3, 30],
      [10, 26],
    ] as const) {
      const from = instantOf({ year: 2031, month, day, hour: 0, minute: 0 }, zone, 'earlier');
      const ticks = timeTicks([from, from + 2 * DAY], 10, midnightIn(zone));
      const next = midnightIn(zone)(from + 1.5 * DAY);
      expect(ticks).toContain(from);
      expect(ticks).toContain(next);
      const gaps = ticks.slice(1).map((tick, n) => (tick - ticks[n]!) / HOUR);
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(5);
      expect(Math.max(...gaps)).toBeLessThanOrEqual(7);
    }
  });

  it('are midnights every so many days where days are what fits', () => {
    const ticks = timeTicks([HOUR, 30 * DAY], 5, UTC);
    expect(ticks).toHaveLength(5);
    expect(ticks.map((tick) => tick % DAY)).toEqual([0, 0, 0, 0, 0]);
  });
});
