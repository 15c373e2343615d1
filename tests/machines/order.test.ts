import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';

describe('the order of things does not hang on who moved last, or on the language of the tablet', () => {
  it('bakes stand in the order of their starts, after presses, dues, a take-back and a reload', () => {
    const hand = new Hand();
    for (const bake of ['c', 'a', 'b']) hand.start(bake, 'bulk.fold');
    const order = () => Object.keys(hand.kitchen.bakes);
    hand.press('c', 'folded');
    expect(order()).toEqual(['c', 'a', 'b']);
    hand.turn(30);
    hand.press('a', 'folded');
    hand.takeBack();
    expect(order()).toEqual(['c', 'a', 'b']);
    expect(Object.keys(hand.replayed().kitchen.bakes)).toEqual(['c', 'a', 'b']);
  });

  it('of two equal calls the bake that was started first rings', () => {
    const hand = new Hand();
    hand.start('b', 'bulk.proving');
    hand.start('a', 'bulk.proving');
    hand.measure('b', { what: 'kitchenTemperature', celsius: 22 });
    hand.turn(180);
    expect(hand.ringing).toBe('b:bulk.look');
    hand.heard('b');
    expect(hand.ringing).toBe('a:bulk.look');
  });

  it('loaves queued at the same instant wait in the order of their bakes’ names, letter codes compared', () => {
    const hand = new Hand();
    for (const bake of ['a', 'ä', 'B']) hand.start(bake, 'oven.queued', [bake]);
    expect(hand.kitchen.oven.context.waiting).toEqual(['B', 'a', 'ä']);
  });

  it('loaves of the bake that was ready first wait first', () => {
    const hand = new Hand();
    hand.start('a', 'proof.look');
    hand.start('b', 'oven.queued');
    hand.turn(1);
    hand.press('a', 'loafReady');
    expect(hand.kitchen.oven.context.waiting).toEqual(['b1', 'b2', 'a1', 'a2']);
  });
});
