import { describe, expect, it } from 'vitest';
import { apply } from '../../machines/kitchen/apply.ts';
import { emptyKitchen, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { Hand } from './support/hand.ts';
import { at, walkToEnd } from './support/onward.ts';

describe('two pots in the oven', () => {
  it('take two loaves in one load, and the log replays without being told how many pots there are', () => {
    const hand = at(new Hand(), 'load', 'oven.queued');
    expect(hand.press('oven', 'loaded', { loaves: ['a1', 'a2'] })).toBe(true);
    expect(hand.kitchen.oven.context.load).toEqual(['a1', 'a2']);
    walkToEnd(hand);
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['no loaf', []],
    ['a loaf twice', ['a1', 'a1']],
    ['a loaf that does not wait', ['a1', 'b1']],
  ])('are not loaded with %s', (_, loaves) => {
    const hand = at(new Hand(), 'load', 'oven.queued');
    expect(hand.press('oven', 'loaded', { loaves })).toBe(false);
    expect(hand.kitchen.oven.context.load).toEqual([]);
  });

  it('are still two after a take-back, a jump and a reload', () => {
    const hand = new Hand();
    hand.kitchen = emptyKitchen(MACHINES, 2);
    hand.start('a', 'oven.queued');
    hand.press('oven', 'ovenOn');
    hand.takeBack();
    expect(hand.kitchen.oven.context.pots).toBe(2);
    hand.do({ kind: 'jump', position: hand.fold.positionOf(hand.kitchen) });
    expect(hand.kitchen.oven.context.pots).toBe(2);
    const { kitchen } = replay(hand.records, MACHINES, 2);
    expect(kitchen.oven.context.pots).toBe(2);
    expect(apply(kitchen, MACHINES, hand.records[0]!.fact).kitchen.oven.context.pots).toBe(2);
  });
});
