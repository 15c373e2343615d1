import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const marks = (hand: Hand) => hand.kitchen.bakes['a']!.context.marks;
const inFridge = () => at(new Hand({ wait: waitFor }), 'proof.retard', 'levain.feed');
/** The look at a cold loaf, ten hours in, and its signs. */
const looked = (signs: Readonly<Record<string, string>>) => {
  const hand = inFridge();
  hand.turn(600);
  hand.press('a', 'loafSeen');
  hand.answer('a', signs);
  hand.press('a', 'loafNotYet');
  return hand;
};

describe('a loaf in the fridge', () => {
  it('shows earliest, likely and latest hour', () => {
    const { earliest, likely, latest } = marks(inFridge());
    expect(earliest).toBeLessThanOrEqual(likely!);
    expect(likely).toBeLessThanOrEqual(latest!);
  });

  it('is moved by the look at it: not grown later, grown and slow to come back sooner', () => {
    const likely = (signs: Readonly<Record<string, string>>) => marks(looked(signs))['likely']!;
    const none = likely({ grown: 'notSure', dent: 'notSure' });
    const tight = likely({ grown: 'none', rim: 'below', dent: 'springs' });
    const grown = likely({ grown: 'grown', rim: 'above', dent: 'stays' });
    expect(tight).toBeGreaterThan(none);
    expect(grown).toBeLessThan(none);
  });

  it('counts from the press that put it there, after a "not yet" too', () => {
    const late = at(new Hand({ wait: waitFor }), 'proof.toFridge', 'levain.feed');
    // It stood for an hour and a half while the call to the fridge was not answered.
    late.turn(90);
    late.press('a', 'inFridge');
    const first = marks(late);
    late.turn(60);
    late.press('a', 'loafSeen');
    late.press('a', 'loafNotYet');
    expect(marks(late)['likely']).toBe(first['likely']);
    expect(marks(late)['latest']).toBe(first['latest']);
  });

  it('joined in the fridge counts from the joining', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'proof.retard');
    const first = marks(hand);
    hand.turn(120);
    hand.press('a', 'loafSeen');
    hand.press('a', 'loafNotYet');
    expect(marks(hand)['likely']).toBe(first['likely']);
  });

  it('is told by a reading too, and its look moves where it is likely over', () => {
    const hand = inFridge();
    const look = hand.deadline('a')!;
    hand.turn(300);
    hand.measure('a', { what: 'growth', grown: 'grown', rim: 'above' });
    hand.measure('a', { what: 'poke', dent: 'stays' });
    hand.turn(60);
    hand.measure('a', { what: 'growth', grown: 'grown', rim: 'above' });
    hand.measure('a', { what: 'poke', dent: 'stays' });
    const moved = hand.deadline('a') ?? hand.now;
    expect(moved).toBeLessThan(look - HOUR + MINUTE);
  });

  it('stands where it stood when its log is read again', () => {
    const hand = looked({ grown: 'none', rim: 'below', dent: 'springs' });
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(kitchen.bakes['a']!.context.marks).toEqual(marks(hand));
  });
});
