import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';
import { SCOOP, TIN } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
/** Divided at noon, in the tins 40 min later. */
const DIVIDED = T0 + 6 * HOUR;
const IN = DIVIDED + 40 * MINUTE;

const input = (change: Partial<WaitInput> = {}, recipe: Recipe = TIN): WaitInput => ({
  stage: 'proof.warm',
  now: IN,
  recipe,
  kitchen: 24,
  entered: {
    'mix.first': T0,
    'mix.work': T0 + 30 * MINUTE,
    [recipe.process.shaping === 'scoop' ? 'shape.scoop' : 'shape.divide']: DIVIDED,
    'proof.warm': IN,
  },
  touches: 0,
  prior: { mean: 0, sd: 0.2 },
  seen: [],
  done: [],
  again: false,
  ...change,
});
const marks = (change: Partial<WaitInput> = {}, recipe?: Recipe) =>
  waitFor(input(change, recipe)).marks;
const poked = (dent: 'springs' | 'slow' | 'stays', minutes: number) => ({
  at: IN + minutes * MINUTE,
  reading: { what: 'poke', dent } satisfies Reading,
});

const WARM = SHIPPED.map(shippedFormula).filter(
  ({ process }) => process.retard === 0 && process.shaping === 'round',
);

describe('a warm proof', () => {
  it.each(WARM)('of $name is likely ready about when its formula says, at 24 °C', (formula) => {
    // Joined on the shaped loaf: it has risen as far as the formula wants.
    const recipe = { ...TIN, formula, process: formula.process };
    const entered = { 'shape.divide': DIVIDED, 'proof.warm': IN };
    const minutes = (marks({ entered }, recipe)['likely']! - IN) / MINUTE;
    expect(Math.abs(minutes - formula.process.warm)).toBeLessThanOrEqual(10);
  });

  it('has the oven hot by its likely end, and turns to whichever comes first', () => {
    const { oven, turn, look, likely } = marks();
    expect((likely! - oven!) / MINUTE).toBeCloseTo(TIN.process.preheat + 5, 3);
    expect(turn).toBe(Math.min(oven!, look!));
  });

  it('never asks for the oven in the past', () => {
    const { oven, turn } = marks({ now: IN + 20 * HOUR });
    expect(oven).toBe(IN + 20 * HOUR);
    expect(turn).toBe(oven);
  });

  it('of a dent that springs is later, of one that stays sooner, of one as foretold surer', () => {
    const none = marks();
    const width = (m: Readonly<Record<string, number>>) => m['latest']! - m['earliest']!;
    const springs = marks({ seen: [poked('springs', 120)] });
    const stays = marks({ seen: [poked('stays', 60)] });
    expect(springs['likely']).toBeGreaterThan(none['likely']!);
    expect(stays['likely']).toBeLessThan(none['likely']!);
    const foretold = (none['likely']! - IN) / MINUTE;
    expect(width(marks({ seen: [poked('slow', foretold)] }))).toBeLessThan(width(none));
  });

  it('does not weigh a dent of before its bulk ended', () => {
    const early = { ...poked('stays', 0), at: DIVIDED - HOUR };
    expect(marks({ seen: [early] })).toEqual(marks());
  });

  it('is sooner in a warmer room, shaped or spooned in', () => {
    for (const recipe of [TIN, SCOOP]) {
      const at = (kitchen: number) => marks({ kitchen }, recipe)['likely']! - IN;
      expect(at(26)).toBeLessThan(at(24));
      expect(at(22)).toBeGreaterThan(at(24));
    }
  });

  it('of a spooned dough takes its formula’s minutes at 24 °C', () => {
    const minutes = (marks({}, SCOOP)['likely']! - IN) / MINUTE;
    expect(minutes).toBeCloseTo(SCOOP.process.warm, 0);
  });
});
