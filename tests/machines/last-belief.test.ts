import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const belief = (hand: Hand, bake: string) => hand.kitchen.bakes[bake]!.context.belief;

/** A bake whose dough rose quickly, and what was believed of it. */
const quickBake = (): { hand: Hand; learned: { mean: number; sd: number } } => {
  const hand = at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');
  hand.turn(60);
  hand.measure('a', { what: 'rise', percent: 90, of: 'dough' });
  return { hand, learned: belief(hand, 'a') };
};

describe('a starter from bake to bake', () => {
  it('begins with the opening belief, and the next bake with what was learned', () => {
    const { hand, learned } = quickBake();
    expect(learned.mean).toBeGreaterThan(0.05);
    hand.press('a', 'ended');
    hand.turn(7 * 24 * 60);
    hand.start('b');
    expect(belief(hand, 'b').mean).toBe(learned.mean);
    expect(belief(hand, 'b').sd).toBeCloseTo(Math.min(0.25, Math.hypot(learned.sd, 0.1)), 12);
  });

  it('a bake joined at a wait is reckoned with it from the first', () => {
    const { hand } = quickBake();
    hand.start('b', 'bulk.proving');
    const fresh = new Hand({ wait: waitFor, now: hand.now });
    fresh.start('b', 'bulk.proving');
    const likely = (one: Hand) => one.kitchen.bakes['b']!.context.marks['likely']!;
    expect(likely(hand)).toBeLessThan(likely(fresh));
  });

  it('is not taught by a bake whose start, or whose reading, was taken back', () => {
    const { hand } = quickBake();
    hand.takeBack();
    hand.start('b');
    expect(belief(hand, 'b').mean).toBeCloseTo(OPENING_BELIEF.mean, 12);
  });

  it('stands the same when the log is replayed, and no model runs', () => {
    const { hand } = quickBake();
    hand.start('b');
    const again = replay(hand.records, hand.machines).kitchen;
    expect(again.bakes['b']!.context.belief).toEqual(belief(hand, 'b'));
    expect(again.starts).toEqual(hand.kitchen.starts);
  });
});
