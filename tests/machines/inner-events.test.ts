import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

describe('a press', () => {
  it.each(['due', 'sync', 'judged', 'reading', 'corrected', 'wake', 'xstate.init', '', '*'])(
    'named %j is not an act of hands, and changes nothing in a bake or the oven',
    (act) => {
      const hand = at(new Hand(), 'lidded', 'oven.queued');
      hand.start('b', 'bulk.proving');
      const before = hand.fold.positionOf(hand.kitchen);
      for (const who of ['b', 'oven']) expect(hand.press(who, act)).toBe(false);
      expect(hand.fold.positionOf(hand.kitchen)).toEqual(before);
    },
  );

  it('for a bake that never was is refused', () => {
    const hand = new Hand();
    expect(hand.press('nobody', 'mixed')).toBe(false);
    expect(hand.press('constructor', 'mixed')).toBe(false);
  });
});
