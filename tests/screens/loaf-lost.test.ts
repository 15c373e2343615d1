import { expect, it } from 'vitest';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand, weight: 'g' | 'oz' = 'g') =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, { heat: 'C', weight });

it('offers the scale at the hand-over, asks nothing, and tells what the loaf lost', () => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1']);
  walkTo(hand, 'a', 'cool.handOver');
  hand.press('oven', 'ovenOff');
  const before = see(hand);
  expect([before.third, before.measures]).toEqual(['weigh', 'weight.loaf']);
  expect(before.slab.deed).toMatchObject({ act: 'handedOver' });
  const weigh = (grams: number) => hand.measure('a', { what: 'weight', grams, of: 'loaf' });
  weigh(774);
  expect(see(hand).detail).toBe('It lost 126 g in the oven: 14 %. Leave warm bags open.');
  expect(see(hand, 'oz').detail).toMatch(/^It lost 4\.45 oz in the oven: 14 %\./);
  // Heavier than its dough: another loaf, or a slip of the keys.
  weigh(950);
  expect(see(hand).detail).toBe(before.detail);
  hand.takeBack();
  hand.takeBack();
  expect(see(hand).detail).toBe(before.detail);
});
