import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const marksOf = (change: Partial<WaitInput>) =>
  waitFor({
    stage: 'bulk.proving',
    now: T0 + 3 * HOUR,
    recipe: RECIPE,
    kitchen: 18,
    entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 90 * MINUTE },
    touches: 3,
    prior: { mean: 0, sd: 0.25 },
    seen: [],
    done: [],
    again: true,
    ...change,
  }).marks;

describe('a bowl carried to a warm place', () => {
  it('is ready sooner by hours where the kitchen is cold, and not before it was carried', () => {
    const { warmed, likely, latest } = marksOf({});
    expect(likely! - warmed!).toBeGreaterThan(1.5 * HOUR);
    expect(warmed).toBeGreaterThan(T0 + 3 * HOUR);
    // The window itself tells of the kitchen as it is.
    expect(latest).toBeGreaterThan(likely!);
  });

  it('is not worth a word where it saves less than three quarters of an hour', () => {
    for (const kitchen of [25, 26, 28]) expect(marksOf({ kitchen })).not.toHaveProperty('warmed');
    expect(marksOf({ now: marksOf({})['likely']! - 20 * MINUTE })).not.toHaveProperty('warmed');
  });

  it('gains the less the later it is carried, and never costs time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 22, noNaN: true }),
        fc.integer({ min: 0, max: 6 * HOUR }),
        fc.integer({ min: 10 * MINUTE, max: 3 * HOUR }),
        (kitchen, after, later) => {
          const at = (ms: number) => marksOf({ kitchen, now: T0 + 90 * MINUTE + ms });
          const [soon, late] = [at(after), at(after + later)];
          if (late['warmed'] === undefined) return;
          expect(soon['warmed']).toBeLessThanOrEqual(late['warmed'] + 50);
          expect(late['warmed']).toBeLessThan(late['likely']!);
        },
      ),
      { numRuns: 40 },
    );
  });
});
