import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 18);
/** Into the fridge without any counter, out of it next morning, hardly grown. */
const IN = T0 + 40 * MINUTE;
const OUT = IN + 12 * HOUR;

const input = (change: Partial<WaitInput> = {}): WaitInput => ({
  stage: 'proof.warm',
  now: OUT,
  recipe: RECIPE,
  kitchen: 24,
  entered: { 'shape.divide': T0, 'proof.look': OUT, 'proof.warm': OUT },
  touches: 3,
  prior: { mean: 0, sd: 0.15 },
  seen: [
    { at: OUT, reading: { what: 'growth', grown: 'little', rim: 'below' } },
    { at: OUT, reading: { what: 'poke', dent: 'springs' } },
  ],
  done: [],
  again: true,
  chilled: IN,
  takenOut: OUT,
  ...change,
});
const marks = (change: Partial<WaitInput> = {}) => waitFor(input(change)).marks;
const look = (change: Partial<WaitInput> = {}) => (marks(change)['look']! - OUT) / MINUTE;

describe('a loaf that stands out after the fridge', () => {
  it('is looked at within the hour or two that print gives', () => {
    expect(look()).toBeGreaterThanOrEqual(60);
    expect(look()).toBeLessThanOrEqual(120);
  });

  it('is looked at by the dough clock: sooner in a warm kitchen, for a quick starter, when nearly there', () => {
    expect(look({ kitchen: 27 })).toBeLessThan(look());
    expect(look({ prior: { mean: 0.1, sd: 0.15 } })).toBeLessThan(look());
    const nearly: Reading = { what: 'growth', grown: 'grown' };
    expect(look({ seen: [{ at: OUT, reading: nearly }] })).toBeLessThan(look());
  });

  it('is never left for longer than two hours without a look, nor looked at within half an hour', () => {
    expect(look({ kitchen: 12, prior: { mean: -0.6, sd: 0.1 } })).toBe(120);
    expect(look({ prior: { mean: 0.4, sd: 0.1 }, seen: [] })).toBe(30);
  });

  it('follows the kitchen that is measured meanwhile', () => {
    const warm = { at: OUT + 10 * MINUTE, reading: { what: 'kitchenTemperature', celsius: 28 } };
    expect(look({ seen: [...input().seen, warm as WaitInput['seen'][number]] })).toBeLessThan(
      look(),
    );
  });

  it('has the oven hot by its likely end, and turns to whichever comes first', () => {
    const { oven, turn, likely, look: next } = marks();
    expect((likely! - oven!) / MINUTE).toBeCloseTo(RECIPE.process.preheat + 5, 3);
    expect(turn).toBe(Math.min(oven!, next!));
  });

  it('that still springs back is looked at again in 20 to 60 minutes', () => {
    const now = OUT + 100 * MINUTE;
    const entered = { ...input().entered, 'proof.poke': now };
    const springs = { at: now, reading: { what: 'poke', dent: 'springs' } } as const;
    const after = marks({ now, entered, seen: [...input().seen, springs] });
    expect((after['look']! - now) / MINUTE).toBeGreaterThanOrEqual(20);
    expect((after['look']! - now) / MINUTE).toBeLessThanOrEqual(60);
    expect(after['likely']).toBeGreaterThan(marks()['likely']!);
  });

  it('says its doubt in a kitchen that the clock was not fitted to', () => {
    expect(waitFor(input()).doubt).toBeUndefined();
    expect(waitFor(input({ kitchen: 29 })).doubt).toBe('above28');
  });
});
