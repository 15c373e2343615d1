import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Belief } from '../../../src/core/readiness/belief.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
/** The search for the end is exact to a fiftieth of a second. */
const CLOSE = 50;

interface Dough {
  readonly kitchen: number;
  readonly pff: number;
  readonly salt: number;
  readonly mean: number;
}

const anyDough = fc.record({
  kitchen: fc.double({ min: 5, max: 29, noNaN: true }),
  pff: fc.double({ min: 0.02, max: 0.2, noNaN: true }),
  salt: fc.double({ min: 0, max: 2.5, noNaN: true }),
  mean: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
});
const more = fc.double({ min: 0.001, max: 1, noNaN: true });

const recipeOf = ({ pff, salt }: Dough): Recipe => ({
  ...RECIPE,
  formula: { ...RECIPE.formula, salt, levain: { ...RECIPE.formula.levain, pff } },
});

const waitOf = (stage: WaitInput['stage'], dough: Dough, sd = 0.25) =>
  waitFor({
    stage,
    now: T0 + 90 * MINUTE,
    recipe: recipeOf(dough),
    kitchen: dough.kitchen,
    entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 90 * MINUTE },
    touches: 0,
    prior: { mean: dough.mean, sd } satisfies Belief,
    seen: [],
    done: [],
    again: false,
  }).marks;

/** That `mark` of the second dough is no later than that of the first. */
const noLater = (
  stage: WaitInput['stage'],
  change: (dough: Dough, by: number) => Dough,
  mark = 'likely',
) =>
  fc.assert(
    fc.property(anyDough, more, (dough, by) => {
      const before = waitOf(stage, dough)[mark]!;
      expect(waitOf(stage, change(dough, by))[mark]!).toBeLessThanOrEqual(before + CLOSE);
    }),
    { numRuns: 60 },
  );

describe('the laws of the wait', () => {
  it.each(['levain.ripening', 'bulk.proving'] as const)(
    'a warmer kitchen never makes %s later, up to 30 °C',
    (stage) => noLater(stage, (dough, by) => ({ ...dough, kitchen: dough.kitchen + by })),
  );

  it('more levain never makes the bulk later', () => {
    noLater('bulk.proving', (dough, by) => ({ ...dough, pff: dough.pff + by / 20 }));
  });

  it('less salt never makes the bulk later, so more is never sooner', () => {
    noLater('bulk.proving', (dough, by) => ({ ...dough, salt: dough.salt * (1 - by) }));
  });

  it.each(['earliest', 'likely', 'latest', 'look'])(
    'a livelier starter never moves the %s back',
    (mark) => noLater('bulk.proving', (dough, by) => ({ ...dough, mean: dough.mean + by }), mark),
  );

  it('a firmer belief narrows the window and leaves its middle', () => {
    fc.assert(
      fc.property(anyDough, (dough) => {
        const [wide, tight] = [
          waitOf('bulk.proving', dough, 0.3),
          waitOf('bulk.proving', dough, 0.1),
        ];
        expect(tight['likely']).toBe(wide['likely']);
        expect(tight['earliest']).toBeGreaterThanOrEqual(wide['earliest']!);
        expect(tight['latest']).toBeLessThanOrEqual(wide['latest']!);
      }),
      { numRuns: 60 },
    );
  });
});
