import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gamma } from '../../../src/core/clock/gamma.ts';
import { hoursUntil } from '../../../src/core/clock/hours-until.ts';
import { temperatureAt, temperatureIn, type Path } from '../../../src/core/clock/stretch.ts';
import { theta } from '../../../src/core/clock/theta.ts';

const degrees = fc.double({ min: -5, max: 55, noNaN: true });
const stretch = fc.record({
  hours: fc.double({ min: 0.01, max: 6, noNaN: true }),
  from: degrees,
  toward: degrees,
  tau: fc.double({ min: 1, max: 8, noNaN: true }),
  factor: fc.double({ min: 0.5, max: 1.4, noNaN: true }),
});
const anyPath: fc.Arbitrary<Path> = fc.array(stretch, { minLength: 1, maxLength: 4 });
const lengthOf = (path: Path) => path.reduce((sum, { hours }) => sum + hours, 0);
const still = (celsius: number, hours = Infinity, factor = 1): Path => [
  { hours, from: celsius, toward: celsius, tau: 5, factor },
];

describe('temperature along a path', () => {
  it('starts at the start, ends at the room, and has gone 63 % of the way after one τ', () => {
    const cooling = { from: 30, toward: 20, tau: 3 };
    expect(temperatureIn(cooling, 0)).toBe(30);
    expect(temperatureIn(cooling, 3)).toBeCloseTo(20 + 10 / Math.E, 12);
    expect(temperatureIn(cooling, Infinity)).toBe(20);
  });

  it('takes each stretch in its turn and stays as it ended', () => {
    const path: Path = [...still(24, 1), { hours: 2, from: 24, toward: 4, tau: 2.5, factor: 1 }];
    expect(temperatureAt(path, 0.5)).toBe(24);
    expect(temperatureAt(path, 1)).toBe(24);
    expect(temperatureAt(path, 2)).toBeCloseTo(4 + 20 * Math.exp(-0.4), 12);
    expect(temperatureAt(path, 90)).toBe(temperatureAt(path, 3));
  });

  it('of no path at all is an impossible call', () => {
    expect(() => temperatureAt([], 0)).toThrow('temperatureAt: the path must not be empty.');
  });
});

describe('theta', () => {
  it('at one temperature is hours times the rate, and at 26 °C the hours themselves', () => {
    expect(theta(still(26), 0, 3.5)).toBeCloseTo(3.5, 12);
    expect(theta(still(21, 9, 0.9), 1, 3)).toBeCloseTo(2 * 0.9 * gamma(21), 12);
  });

  it('adds nothing beyond the end of the path, nor in no time', () => {
    expect(theta(still(26, 2), 0, 50)).toBeCloseTo(2, 12);
    expect(theta(still(26), 4, 4)).toBe(0);
  });

  it('split anywhere is the same as all at once', () => {
    const cut = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyPath, cut, cut, (path, a, b) => {
        const [one, two] = [a, b].sort((x, y) => x - y).map((c) => c * lengthOf(path)) as [
          number,
          number,
        ];
        const end = lengthOf(path);
        const parts = theta(path, 0, one) + theta(path, one, two) + theta(path, two, end);
        expect(Math.abs(parts - theta(path, 0, end))).toBeLessThan(2e-7);
      }),
    );
  });

  it('a stretch cut in two by hand is the same path', () => {
    fc.assert(
      fc.property(stretch, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (whole, share) => {
        const hours = whole.hours * share;
        const halves: Path = [
          { ...whole, hours },
          { ...whole, hours: whole.hours - hours, from: temperatureIn(whole, hours) },
        ];
        const difference = theta(halves, 0, whole.hours) - theta([whole], 0, whole.hours);
        expect(Math.abs(difference)).toBeLessThan(2e-7);
      }),
    );
  });

  it('of a drifting dough agrees with a plain sum in steps of a third of a second to 1e-7', () => {
    for (const [from, toward, tau] of [
      [27.5, 22, 5],
      [25.2, 4, 2.5],
      [34, 8, 1],
      [-4, 33, 1.1],
    ] as const) {
      const steps = 40_000;
      const h = 4 / steps;
      let sum = 0;
      for (let i = 0; i < steps; i += 1)
        sum += gamma(toward + (from - toward) * Math.exp(-((i + 0.5) * h) / tau)) * h;
      const path: Path = [{ hours: 4, from, toward, tau, factor: 1 }];
      expect(Math.abs(theta(path, 0, 4) - sum), `${from} → ${toward}`).toBeLessThan(1e-7);
    }
  });

  it('is never less on a path that is warmer throughout', () => {
    fc.assert(
      fc.property(anyPath, fc.double({ min: 0, max: 5, noNaN: true }), (path, more) => {
        const warmer = path.map((s) => ({ ...s, from: s.from + more, toward: s.toward + more }));
        const end = lengthOf(path);
        expect(theta(warmer, 0, end)).toBeGreaterThanOrEqual(theta(path, 0, end) - 2e-7);
      }),
    );
  });
});

describe('hours until', () => {
  it('at one temperature is what is needed over the rate', () => {
    expect(hoursUntil(still(21), 0, 72, () => 4)).toBeCloseTo(4 / gamma(21), 5);
    expect(hoursUntil(still(26), 2, 72, () => 4)).toBeCloseTo(6, 5);
  });

  it('is the beginning where nothing is needed', () => {
    expect(hoursUntil(still(26), 1.5, 72, () => 0)).toBe(1.5);
  });

  it('is null where it is not reached before the horizon', () => {
    expect(hoursUntil(still(0), 0, 72, () => 0.1)).toBeNull();
    expect(hoursUntil(still(26), 0, 3, () => 3.001)).toBeNull();
    expect(hoursUntil(still(26), 0, 3, () => 2.999)).toBeCloseTo(2.999, 5);
  });

  it('gives the moment at which theta is just what is needed, whatever the path', () => {
    fc.assert(
      fc.property(anyPath, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (path, share) => {
        const end = lengthOf(path);
        const needed = theta(path, 0, end) * share;
        fc.pre(needed > 1e-3);
        const at = hoursUntil(path, 0, end, () => needed)!;
        expect(theta(path, 0, at)).toBeGreaterThanOrEqual(needed - 1e-6);
        expect(theta(path, 0, Math.max(0, at - 1e-5))).toBeLessThan(needed + 1e-6);
      }),
    );
  });
});
