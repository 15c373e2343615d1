import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

const place = (hand: Hand) => hand.kitchen.bakes['a']!.context;

describe('a reading', () => {
  it('moves the deadline of the wait it speaks of, counted from where that wait began', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const look = hand.deadline('a')!;
    hand.turn(40);
    expect(hand.dough('a', 26)).toBe(true);
    expect(hand.deadline('a')).toBe(look - 20 * MINUTE);
    expect(hand.fold.wanted(hand.kitchen).alarmAt).toBe(look - 20 * MINUTE);
  });

  it('that puts the deadline in the past calls now, not in the past', () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.turn(150);
    hand.dough('a', 40);
    expect(hand.stage('a')).toBe('bulk.look');
    expect(place(hand).entered['bulk.look']).toBe(hand.now);
    expect(hand.ringing).toBe('a:bulk.look');
  });

  it.each(['mix.rest', 'bulk.between', 'shape.benchRest', 'proof.retard', 'cool.cooling'])(
    'does not start the wait of %s again',
    (stage) => {
      const hand = at(new Hand({ wait: waitFor }), stage, 'levain.feed');
      const deadline = hand.deadline('a');
      expect(deadline).not.toBeNull();
      hand.turn(5);
      expect(hand.measure('a', { what: 'kitchenTemperature', celsius: 21 })).toBe(true);
      expect(hand.deadline('a')).toBe(deadline);
    },
  );

  it.each([
    ['levain.ripening', 'levainNotYet'],
    ['bulk.proving', 'bulkNotYet'],
    ['proof.retard', 'loafNotYet'],
  ])('after a "not yet" leaves the next look of %s where it is', (stage, notYet) => {
    const hand = at(new Hand({ wait: waitFor }), stage, 'levain.feed');
    hand.turnTo(hand.deadline('a')!);
    hand.press('a', notYet);
    const look = hand.deadline('a');
    hand.turn(5);
    hand.measure('a', { what: 'weight', grams: 900, of: 'loaf' });
    expect(hand.deadline('a')).toBe(look);
  });

  it('in a stage that waits for nothing is only kept', () => {
    const hand = at(new Hand(), 'shape.divide');
    const runs = hand.modelRuns;
    expect(hand.measure('a', { what: 'firstPiece', grams: 912 })).toBe(true);
    expect(hand.stage('a')).toBe('shape.divide');
    expect(hand.modelRuns).toBe(runs);
    expect(place(hand).readings['firstPiece']?.reading).toEqual({ what: 'firstPiece', grams: 912 });
  });

  it('of a bake that is not there is refused', () => {
    expect(new Hand().dough('a', 25)).toBe(false);
    expect(at(new Hand(), 'lidded', 'oven.queued').dough('oven', 25)).toBe(false);
  });
});
