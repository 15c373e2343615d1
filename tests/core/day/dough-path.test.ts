import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { temperatureAt } from '../../../src/core/clock/stretch.ts';
import { theta } from '../../../src/core/clock/theta.ts';
import { roomOf, salted, temperaturePath } from '../../../src/core/day/dough-path.ts';
import type { Seen } from '../../../src/core/records/seen.ts';
import { HOUR } from '../../../src/core/units.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const dough = (hours: number, celsius: number): Seen => ({
  at: T0 + hours * HOUR,
  reading: { what: 'doughTemperature', celsius },
});
const room = (hours: number, celsius: number): Seen => ({
  at: T0 + hours * HOUR,
  reading: { what: 'kitchenTemperature', celsius },
});
const body = (...seen: Seen[]) => ({ kitchen: 22, seen, begin: T0, hours: 72, tau: 5 });
const at = (hours: number, ...seen: Seen[]): number =>
  temperatureAt(temperaturePath(body(...seen)), hours);

describe('the temperature of a dough', () => {
  it('is the kitchen’s while nothing is measured', () => {
    for (const hours of [0, 1, 10]) expect(at(hours)).toBe(22);
  });

  it('passes near what was measured and drifts on to the room', () => {
    expect(at(0.7, dough(0.7, 27))).toBeCloseTo(27, 0);
    expect(at(30, dough(0.7, 27))).toBeCloseTo(22, 0);
  });

  it('learns from a second reading how quickly this bowl cools', () => {
    const slow = at(4, dough(0.5, 27), dough(2, 26.7));
    const quick = at(4, dough(0.5, 27), dough(2, 24.6));
    expect(slow - quick).toBeGreaterThan(1.5);
  });

  it('begins anew where the dough was moved, and keeps what came before', () => {
    const before = at(1, dough(0.5, 24));
    const moved = [dough(0.5, 24), dough(2, 29)];
    expect(at(1, ...moved)).toBeCloseTo(before, 9);
    expect(at(2, ...moved)).toBeCloseTo(29, 1);
  });

  it('follows a room measured before and during', () => {
    expect(roomOf(body(room(-1, 19), room(2, 25)))).toEqual([
      { hours: 0, celsius: 19 },
      { hours: 2, celsius: 25 },
    ]);
    expect(at(1, room(-1, 19), room(2, 25))).toBeCloseTo(19, 9);
    expect(at(40, room(-1, 19), room(2, 25))).toBeCloseTo(25, 1);
  });

  it('is the same whatever order the readings come in, and finite for odd ones', () => {
    const reading = fc.tuple(
      fc.integer({ min: 0, max: 1200 }),
      fc.oneof(fc.double({ min: -40, max: 200 }), fc.double({ min: 15, max: 32 })),
      fc.boolean(),
    );
    const readings = fc.uniqueArray(reading, { maxLength: 6, selector: ([minutes]) => minutes });
    fc.assert(
      fc.property(readings, (drawn) => {
        const seen = drawn.map(([minutes, celsius, air]) =>
          air ? room(minutes / 60, celsius) : dough(minutes / 60, celsius),
        );
        for (const hours of [0, 3, 9, 24]) {
          expect(Number.isFinite(at(hours, ...seen))).toBe(true);
          expect(at(hours, ...seen)).toBeCloseTo(at(hours, ...seen.toReversed()), 6);
        }
      }),
    );
  });
});

describe('salt along the way', () => {
  it('splits where it went in and changes nothing else', () => {
    const path = temperaturePath(body(dough(0.5, 27), room(2, 25)));
    const whole = salted(path, T0, { unsalted: 1, salted: 1, saltedAt: T0 + 3 * HOUR });
    expect(theta(whole, 0, 10)).toBeCloseTo(theta(path, 0, 10), 9);
    const slowed = salted(path, T0, { unsalted: 1, salted: 0.9, saltedAt: T0 + 3 * HOUR });
    expect(theta(slowed, 0, 10)).toBeCloseTo(theta(path, 0, 3) + 0.9 * theta(path, 3, 10), 9);
  });
});
