import { describe, expect, it } from 'vitest';
import { seenBy } from '../../machines/kitchen/seen-by.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const proving = (): Hand => at(new Hand({ wait: waitFor }), 'bulk.proving', 'levain.feed');
const context = (hand: Hand) => hand.kitchen.bakes['a']!.context;
const marks = (hand: Hand) => context(hand).marks;
const seen = (hand: Hand) =>
  seenBy(hand.kitchen, hand.kitchen.bakes['a']!).map(({ reading }) => reading);
const YOUNG = { rise: '25', edge: 'flat', bubbles: 'none', wobble: 'firm', top: 'smooth' };

describe('what was seen of a bake', () => {
  it('a high rise brings the window forward and is believed; taken back, all stands as before', () => {
    const hand = proving();
    const before = { marks: marks(hand), belief: context(hand).belief };
    hand.turn(30);
    hand.measure('a', { what: 'rise', percent: 80, of: 'dough' });
    expect(marks(hand)['likely']!).toBeLessThan(before.marks['likely']!);
    expect(context(hand).belief.mean).toBeGreaterThan(before.belief.mean);
    expect(context(hand).belief.sd).toBeLessThan(before.belief.sd);
    hand.takeBack();
    expect(marks(hand)).toEqual(before.marks);
    expect(context(hand).belief).toEqual(before.belief);
  });

  it('two readings weigh more than one, in whatever order they came', () => {
    const hand = proving();
    hand.turn(30);
    hand.measure('a', { what: 'rise', percent: 20, of: 'dough' });
    const { sd } = context(hand).belief;
    hand.turn(30);
    hand.measure('a', { what: 'rise', percent: 45, of: 'dough' });
    expect(context(hand).belief.sd).toBeLessThan(sd);
  });

  it('a look that answers "not yet" moves the window by what it saw', () => {
    const hand = proving();
    const { likely } = marks(hand);
    hand.turnTo(hand.deadline('a')!);
    hand.answer('a', YOUNG);
    expect(seen(hand)).toEqual([]);
    hand.press('a', 'bulkNotYet');
    expect(seen(hand)).toEqual([
      { what: 'rise', percent: 25, of: 'dough' },
      { what: 'edge', edge: 'flat', bubbles: 'none' },
    ]);
    expect(marks(hand)['likely']!).toBeGreaterThan(likely!);
    hand.takeBack();
    expect(seen(hand)).toEqual([]);
  });

  it('of an answer given twice in one look, the last counts', () => {
    const hand = proving();
    hand.turnTo(hand.deadline('a')!);
    hand.answer('a', YOUNG);
    hand.answer('a', { rise: '50' });
    hand.press('a', 'bulkNotYet');
    expect(seen(hand)).toContainEqual({ what: 'rise', percent: 50, of: 'dough' });
    expect(seen(hand)).not.toContainEqual({ what: 'rise', percent: 25, of: 'dough' });
  });

  it('a corrected reading is weighed as corrected, at the hour it was taken', () => {
    const hand = proving();
    hand.turn(30);
    hand.measure('a', { what: 'rise', percent: 80, of: 'dough' });
    const right = new Hand({ wait: waitFor });
    at(right, 'bulk.proving', 'levain.feed');
    right.turn(30);
    right.measure('a', { what: 'rise', percent: 30, of: 'dough' });
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'rise', percent: 30, of: 'dough' } });
    expect(marks(hand)['likely']).toBe(marks(right)['likely']);
  });

  it('of another bake is not weighed in this one', () => {
    const hand = proving();
    hand.start('b', 'bulk.proving');
    const { likely } = marks(hand);
    hand.measure('b', { what: 'rise', percent: 100, of: 'dough' });
    expect(marks(hand)['likely']).toBe(likely);
  });
});
