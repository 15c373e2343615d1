import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE, SCOOP } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
/** Divided, rested and shaped: the baskets are filled 36 min later. */
const FILLED = T0 + 36 * MINUTE;

const input = (mean: number, process = {}, change: Partial<WaitInput> = {}): WaitInput => ({
  stage: 'shape.basket',
  now: FILLED,
  recipe: { ...RECIPE, process: { ...RECIPE.process, ...process } },
  kitchen: 25,
  entered: { 'shape.divide': T0, 'shape.basket': FILLED },
  touches: 3,
  prior: { mean, sd: 0.15 },
  seen: [],
  done: [],
  again: false,
  ...change,
});
const minutes = (...of: Parameters<typeof input>): number =>
  (waitFor(input(...of)).marks['fridge']! - FILLED) / MINUTE;

describe('the counter before the fridge', () => {
  it('is longer for a slow starter, a short retard, a cold fridge and a cold kitchen', () => {
    expect(minutes(-0.1)).toBeGreaterThan(minutes(0));
    expect(minutes(0)).toBeGreaterThan(minutes(0.1));
    expect(minutes(0, { retard: 600 })).toBeGreaterThan(minutes(0, { retard: 960 }));
    expect(minutes(0, { fridge: 3 })).toBeGreaterThan(minutes(0, { fridge: 6 }));
    expect(minutes(0, {}, { kitchen: 22 })).toBeGreaterThan(minutes(0));
  });

  it('is in steps of five, from none to ninety', () => {
    expect(minutes(0) % 5).toBe(0);
    expect(minutes(0.6)).toBe(0);
    expect(minutes(-0.6)).toBe(90);
  });

  it('brings a likely loaf to ready at the end of its retard', () => {
    for (const mean of [-0.1, 0, 0.1]) {
      for (const retard of [600, 840]) {
        const chilled = FILLED + minutes(mean, { retard }) * MINUTE;
        const likely = waitFor(
          input(mean, { retard }, { stage: 'proof.retard', now: chilled, chilled }),
        ).marks['likely']!;
        // A step of five minutes on the counter is an hour or two in the cold.
        expect(Math.abs((likely - chilled) / HOUR - retard / 60)).toBeLessThanOrEqual(2);
      }
    }
  });

  it('is waited for as long as was said, however long the baskets took', () => {
    const said = minutes(0);
    const now = FILLED + 12 * MINUTE;
    const { end } = waitFor(input(0, {}, { stage: 'proof.counter', now })).marks;
    expect((end! - now) / MINUTE).toBe(said);
  });

  it('of a spooned dough is its process’s own', () => {
    const recipe = { ...SCOOP, process: { ...SCOOP.process, retard: 600, counter: 25 } };
    const { end } = waitFor(input(0, {}, { stage: 'proof.counter', recipe })).marks;
    expect((end! - FILLED) / MINUTE).toBe(25);
  });

  it('clears a shelf in the rest before it where the baskets go straight in', () => {
    const lead = (mean: number) =>
      waitFor(input(mean, {}, { stage: 'shape.benchRest' })).marks['lead.shelf'];
    expect(lead(0.6)).toBeDefined();
    expect(lead(0)).toBeUndefined();
  });
});
