import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';

const LANES = ['lane.left', 'lane.right'];
const heated = (): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1', 'a2']);
  hand.press('oven', 'ovenOn', { lanes: LANES });
  return walkTo(hand, 'oven', 'load');
};
/** Said of one pot, whatever the oven is at. */
const press = (
  hand: Hand,
  who: string,
  act: 'unloaded' | 'crustReady' | 'lidOff' | 'crustOnRack',
) => hand.do({ kind: 'press', who, act });

describe('a pot refuses what cannot have been', () => {
  it('a loaf out of it that never went in, and stands as it stood', () => {
    const hand = heated();
    const before = hand.kitchen;
    for (const who of [...LANES, 'lane.pot', 'lane.middle', 'oven'])
      for (const act of ['unloaded', 'crustReady', 'lidOff', 'crustOnRack'] as const)
        expect(press(hand, who, act), `${who} ${act}`).toBe(false);
    expect(hand.kitchen).toEqual(before);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a1', 'a2']);
  });

  it('a loaf out of it while its lid is on, or before it was looked at', () => {
    const hand = heated();
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' });
    const stage = () => hand.fold.stageOf(hand.kitchen.lanes['lane.left']!);
    expect(press(hand, 'lane.left', 'unloaded')).toBe(false);
    expect(press(hand, 'lane.left', 'crustReady')).toBe(false);
    expect(stage()).toBe('lidded');
    press(hand, 'lane.left', 'lidOff');
    expect(press(hand, 'lane.left', 'unloaded')).toBe(false);
    expect(press(hand, 'lane.right', 'unloaded')).toBe(false);
    expect(stage()).toBe('open');
    expect(hand.kitchen.lanes['lane.left']!.context.loaves).toEqual(['a1']);
    expect(hand.kitchen.oven.context.out).toEqual([]);
    expect(hand.replayed().trouble).toBeNull();
  });
});
