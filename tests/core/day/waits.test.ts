import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const WAITING = [
  'levain.ripening',
  'mix.rest',
  'bulk.between',
  'bulk.proving',
  'shape.benchRest',
  'proof.counter',
  'proof.retard',
  'preheating',
  'standing',
  'lidded',
  'open',
  'recover',
  'cool.cooling',
] as const;

const input = (change: Partial<WaitInput>): WaitInput => ({
  stage: 'bulk.proving',
  now: T0 + 90 * MINUTE,
  recipe: RECIPE,
  kitchen: 24,
  entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 90 * MINUTE },
  touches: 1,
  belief: OPENING_BELIEF,
  readings: {},
  again: false,
  ...change,
});
const dough = (celsius: number, at = T0 + 40 * MINUTE): WaitInput['readings'] => ({
  doughTemperature: { at, reading: { what: 'doughTemperature', celsius } },
});
const likely = (change: Partial<WaitInput>) => waitFor(input(change)).marks['likely']!;

describe('the instants of a wait', () => {
  it('are finite whole milliseconds in order for every stage and kitchen from −5 to 55 °C', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...WAITING),
        fc.double({ min: -5, max: 55, noNaN: true }),
        fc.boolean(),
        (stage, kitchen, again) => {
          const { marks } = waitFor(input({ stage, kitchen, again }));
          for (const at of Object.values(marks)) expect(Number.isInteger(at)).toBe(true);
          const { earliest, likely: middle, latest, look } = marks;
          if (earliest !== undefined && latest !== undefined) {
            expect(earliest).toBeLessThanOrEqual(middle ?? latest);
            expect(middle ?? earliest).toBeLessThanOrEqual(latest);
          }
          if (look !== undefined) expect(look).toBeGreaterThan(T0 + 90 * MINUTE);
        },
      ),
    );
  });

  it('come no later in a warmer dough', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 29, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (celsius, more) => {
          expect(likely({ readings: dough(celsius + more) })).toBeLessThanOrEqual(
            likely({ readings: dough(celsius) }),
          );
        },
      ),
    );
  });

  it('do not move for a reading that finds the dough at the kitchen’s own temperature', () => {
    expect(Math.abs(likely({ readings: dough(24) }) - likely({}))).toBeLessThan(2000);
  });

  it('shift with what was measured: 27 °C sooner, 21 °C later, in a 24 °C kitchen', () => {
    const planned = likely({});
    expect((planned - likely({ readings: dough(27) })) / MINUTE).toBeGreaterThan(15);
    expect((likely({ readings: dough(21) }) - planned) / MINUTE).toBeGreaterThan(15);
  });

  it('follow a kitchen that turned colder', () => {
    const reading = { what: 'kitchenTemperature', celsius: 18 } as const;
    expect(likely({ readings: { kitchenTemperature: { at: T0, reading } } })).toBeGreaterThan(
      likely({}) + 30 * MINUTE,
    );
  });

  it('look again 20 to 60 minutes on after a not yet, and never at once', () => {
    for (const now of [T0 + HOUR, T0 + 4 * HOUR, T0 + 9 * HOUR]) {
      const look = waitFor(input({ now, again: true })).marks['look']!;
      expect((look - now) / MINUTE).toBeGreaterThanOrEqual(20);
      expect((look - now) / MINUTE).toBeLessThanOrEqual(60);
    }
  });

  it('say their doubt outside 3 to 28 °C and in a dough the clock was not fitted to', () => {
    expect(waitFor(input({ kitchen: 2 })).doubt).toBe('kitchenCold');
    expect(waitFor(input({ kitchen: 29 })).doubt).toBe('above28');
    expect(waitFor(input({})).doubt).toBeUndefined();
  });

  it('of a stage that waits for nothing are an impossible call', () => {
    expect(() => waitFor(input({ stage: 'mix.first' }))).toThrow(
      'The stage mix.first does not wait.',
    );
  });
});
