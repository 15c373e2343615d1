import { describe, expect, it } from 'vitest';
import { fedRecipe } from '../../machines/kitchen/fed.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';

/** A levain fed from so much starter; its window is reckoned from what was weighed. */
const fedFrom = (seed: string): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'levain.feed');
  hand.answer('a', { seed, flour: 'in', water: 'in' });
  return hand;
};
const likely = (hand: Hand) => hand.kitchen.bakes['a']!.context.marks['likely']!;
const feedOf = (hand: Hand) =>
  fedRecipe(hand.kitchen, hand.kitchen.bakes['a']!).lines.feed.map(({ grams }) => grams);

describe('what the levain was really fed', () => {
  it('sets its ripe hour: less starter, later', () => {
    const [usual, less] = [fedFrom('40'), fedFrom('10')];
    expect(feedOf(usual)).toEqual([40, 80, 80]);
    expect(feedOf(less)).toEqual([10, 95, 95]);
    expect(likely(less) - likely(usual)).toBeGreaterThan(2 * HOUR);
  });

  it('begins its ripening when the jar was mixed: the starter’s own warmth is not the jar’s', () => {
    const jar = (hand: Hand, celsius: number) =>
      hand.measure('a', { what: 'levainTemperature', celsius });
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'levain.feed');
    jar(hand, 6);
    hand.turn(5).answer('a', { seed: '40', flour: 'in', water: 'in' });
    const fed = hand.now;
    const plain = likely(fedFrom('40')) - fedFrom('40').now;
    expect(likely(hand) - fed).toBe(plain);
    hand.turn(1);
    jar(hand, 29);
    expect(likely(hand) - fed).toBeLessThan(plain - 10 * MINUTE);
    // Not yet: it counts from its feed, and still by the jar alone.
    const before = likely(hand);
    hand.press('a', 'levainSeen');
    hand.press('a', 'levainNotYet');
    expect(Math.abs(likely(hand) - before)).toBeLessThan(20 * MINUTE);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is the formula’s own where the press carried no weight', () => {
    expect(feedOf(fedFrom('ready'))).toEqual([40, 80, 80]);
    expect(likely(fedFrom('ready'))).toBe(likely(fedFrom('40')));
  });

  it('goes with the press that is taken back', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'levain.feed');
    hand.answer('a', { seed: '10' });
    expect(feedOf(hand)[0]).toBe(10);
    hand.takeBack();
    expect(feedOf(hand)[0]).toBe(40);
  });

  it('stands the same when the log is replayed', () => {
    const hand = fedFrom('10');
    const { kitchen, trouble } = replay(hand.records, hand.machines);
    expect(trouble).toBeNull();
    expect(kitchen.bakes['a']!.context.marks).toEqual(hand.kitchen.bakes['a']!.context.marks);
  });
});
