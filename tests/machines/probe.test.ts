import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

/**
 * A probe speaks at the fold; then the presses before it are taken back, so that what it said now
 * answers the question that was put with "not measured".
 */
const takenBackToTheProbe = (): Hand => {
  const hand = at(new Hand(), 'mix.temperature');
  hand.press('a', 'unmeasured');
  hand.press('a', 'touchNow');
  hand.turn(5);
  hand.dough('a', 26, 'probe');
  hand.turn(5);
  hand.takeBack();
  hand.takeBack();
  return hand;
};

describe('a probe reading that stands while presses before it are taken back', () => {
  it('answers the question again, and the wait it leads to has its instants', () => {
    const hand = takenBackToTheProbe();
    expect(hand.stage('a')).toBe('bulk.between');
    const { entered } = hand.kitchen.bakes['a']!.context;
    expect(hand.deadline('a')).toBe(entered['bulk.between']! + 30 * MINUTE);
  });

  it('keeps those instants through a later take-back', () => {
    const hand = takenBackToTheProbe();
    const touch = hand.deadline('a');
    hand.press('a', 'touchNow');
    hand.turn(10);
    expect(hand.takeBack()).toBe(true);
    expect(hand.deadline('a')).toBe(touch);
  });

  it('loses no press that came after: only the latest is taken back', () => {
    const hand = takenBackToTheProbe();
    hand.turnTo(hand.deadline('a')!);
    expect(hand.stage('a')).toBe('bulk.fold');
    expect(hand.press('a', 'folded')).toBe(true);
    hand.press('a', 'touchNow');
    expect(hand.stage('a')).toBe('bulk.spread');
    hand.press('a', 'spread');
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('bulk.spread');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is not taken back itself', () => {
    const hand = at(new Hand(), 'bulk.fold');
    const press = hand.records.at(-1)!.fact.id;
    hand.dough('a', 26, 'probe');
    expect(hand.fold.takeBackTarget(hand.kitchen)?.id).toBe(press);
  });
});
