import { describe, expect, it } from 'vitest';
import type { Deed } from '../../src/core/records/fact.ts';
import { Hand } from './support/hand.ts';
import { RECIPE } from './support/recipe.ts';

const FORMULA = { ...RECIPE.formula, version: 2, salt: 1.7 };
const KEPT: Deed = { kind: 'formula', formula: FORMULA };

describe('a formula in the log', () => {
  it('is taken while a bake runs, moves nothing in it, and is replayed', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    const before = hand.records.at(-1)!.position;
    expect(hand.do(KEPT)).toBe(true);
    expect(hand.do({ kind: 'formulaOff', formula: FORMULA.id })).toBe(true);
    expect(hand.records).toHaveLength(3);
    expect(hand.records.at(-1)!.position).toEqual(before);
    expect(hand.kitchen.bakes['a']!.context.recipe).toEqual(RECIPE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is no press to take back: the press before it is', () => {
    const hand = new Hand();
    hand.start('a', 'levain.ripe');
    expect(hand.press('a', 'starterKept')).toBe(true);
    hand.do(KEPT);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('levain.ripe');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is not written where it could not be read back', () => {
    const hand = new Hand();
    expect(hand.do({ kind: 'formula', formula: { ...FORMULA, flours: [] } })).toBe(false);
    expect(hand.do({ kind: 'formulaOff', formula: '' })).toBe(false);
    expect(hand.records).toEqual([]);
  });
});
