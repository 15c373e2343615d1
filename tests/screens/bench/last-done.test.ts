import { describe, expect, it } from 'vitest';
import { lastDone } from '../../../src/screens/bench/last-done.ts';
import { Hand } from '../../machines/support/hand.ts';

const done = ({ records, kitchen }: Hand) => lastDone(records, kitchen.starts)?.stage ?? null;

/** Flour and water have been mixed and rest. */
const resting = (): Hand => {
  const hand = new Hand();
  hand.start('a', 'mix.first');
  hand.press('a', 'mixed');
  return hand;
};

describe('what was done last', () => {
  it('is nothing before the first press', () => {
    const hand = new Hand();
    expect(done(hand)).toBeNull();
    hand.start('a', 'mix.first');
    expect(done(hand)).toBeNull();
  });

  it('is the stage of the last press, also once a call was hushed after it', () => {
    const hand = resting();
    expect(done(hand)).toBe('mix.first');
    hand.turn(40);
    hand.heard('a');
    expect(done(hand)).toBe('mix.first');
    expect(lastDone(hand.records, hand.kitchen.starts)?.at).toBe(hand.records[1]!.fact.at);
  });

  it('is the stage that time had led into, which no row tells of', () => {
    const hand = resting().turn(40);
    hand.answer('a', { salt: 'in' });
    expect(done(hand)).toBe('mix.salt');
  });

  it('is not what was taken back', () => {
    const hand = resting().turn(40);
    hand.answer('a', { salt: 'in' });
    hand.takeBack();
    expect(done(hand)).toBe('mix.first');
  });
});
