import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';
import { RECIPE, TIN } from './support/recipe.ts';

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

describe('the baskets', () => {
  const filled = (from = 'levain.feed', bake = RECIPE) => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', from, ['a1'], bake);
    return at(hand, 'shape.basket');
  };

  it('are told how long they will stand, once, and stand that long', () => {
    const hand = filled('shape.divide');
    const stands = marks(hand)['fridge']! - hand.now;
    expect(stands).toBeGreaterThan(0);
    const runs = hand.modelRuns;
    hand.measure('a', { what: 'weight', grams: 900, of: 'piece' });
    expect(hand.modelRuns).toBeLessThanOrEqual(runs + 1);
    hand.turn(9);
    hand.press('a', 'inBaskets');
    expect(hand.deadline('a')! - hand.now).toBe(stands);
  });

  it('stand a little longer in a kitchen that turns out cooler, counted from where they were', () => {
    const hand = filled('shape.divide');
    hand.press('a', 'inBaskets');
    const end = hand.deadline('a')!;
    hand.turn(5);
    hand.measure('a', { what: 'kitchenTemperature', celsius: 21 });
    expect((hand.deadline('a')! - end) / MINUTE).toBeGreaterThan(0);
    expect((hand.deadline('a')! - end) / MINUTE).toBeLessThanOrEqual(20);
  });

  it('told to go straight in are put there by the next press, and nothing rings for it', () => {
    const hand = filled('shape.divide', {
      ...RECIPE,
      process: { ...RECIPE.process, fridge: 9, retard: 1080 },
    });
    expect(marks(hand)['fridge']).toBe(hand.now);
    hand.press('a', 'inBaskets');
    expect([hand.stage('a'), hand.ringing]).toEqual(['proof.toFridge', null]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('of a warm proof are told nothing, and no model runs for them', () => {
    const hand = filled('shape.divide', TIN);
    const runs = hand.modelRuns;
    expect(marks(hand)).toEqual({});
    hand.measure('a', { what: 'weight', grams: 900, of: 'piece' });
    expect(hand.modelRuns).toBe(runs);
  });

  it('are told anew when the dough turns out warmer, and never fall due', () => {
    const hand = filled('shape.divide');
    const stands = marks(hand)['fridge']! - hand.now;
    hand.measure('a', { what: 'kitchenTemperature', celsius: 30 });
    expect(marks(hand)['fridge']! - hand.now).toBeLessThan(stands);
    hand.turn(300);
    expect(hand.stage('a')).toBe('shape.basket');
  });
});

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

  it('joined in the fridge has had its bench and counter before', () => {
    const hand = new Hand({ wait: waitFor });
    hand.start('a', 'proof.retard');
    const hours = (marks(hand)['likely']! - hand.now) / HOUR;
    expect(hours).toBeGreaterThan(6);
    expect(hours).toBeLessThan(30);
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
