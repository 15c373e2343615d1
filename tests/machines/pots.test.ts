import { describe, expect, it } from 'vitest';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { Hand } from './support/hand.ts';
import { at, walkToEnd } from './support/onward.ts';

describe('two pots in the oven', () => {
  it('take two loaves in one load, and the log replays without being told how many pots there are', () => {
    const hand = at(new Hand(), 'load', 'oven.queued');
    expect(hand.press('oven', 'loaded', { loaves: ['a1', 'a2'] })).toBe(true);
    expect(loavesIn(hand.kitchen)).toEqual(['a1', 'a2']);
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
    expect(loavesIn(hand.kitchen)).toEqual([]);
  });
});
