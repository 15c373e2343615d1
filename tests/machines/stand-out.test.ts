import { describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { leftForDays } from '../../src/core/readiness/left-for-days.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at, walkToEnd } from './support/onward.ts';

const place = (hand: Hand) => hand.kitchen.bakes['a']!.context;

/** Cold loaves at their look, which have hardly grown and spring back. */
const tight = () => {
  const hand = at(new Hand({ wait: waitFor }), 'proof.look', 'shape.divide');
  hand.answer('a', { grown: 'none', rim: 'below', dent: 'springs' });
  return hand;
};

describe('loaves that have not grown in the cold', () => {
  it('stand out, the oven is asked for in time, and they are looked at again', () => {
    const hand = tight();
    expect(hand.press('a', 'standOut')).toBe(true);
    expect(hand.stage('a')).toBe('proof.warm');
    const { turn, look } = place(hand).marks;
    expect((look! - hand.now) / MINUTE).toBeGreaterThanOrEqual(30);
    expect((look! - hand.now) / MINUTE).toBeLessThanOrEqual(120);
    hand.turnTo(turn!);
    expect(['proof.poke', 'proof.soon']).toContain(hand.stage('a'));
    expect(walkToEnd(hand).stage('a')).toBeNull();
  });

  it('that are not there yet stand on, and their look comes again', () => {
    const hand = tight();
    hand.press('a', 'standOut');
    hand.press('a', 'loafSeen');
    hand.answer('a', { dent: 'springs', grown: 'little' });
    expect(hand.press('a', 'loafNotYet')).toBe(true);
    expect(hand.stage('a')).toMatch(/^proof\.(warm|soon)$/);
    expect(hand.deadline('a')).toBeGreaterThan(hand.now);
  });

  it('are not taken for loaves left for days after a long night in the cold', () => {
    const hand = tight();
    hand.turn(30 * 60);
    hand.press('a', 'standOut');
    hand.press('a', 'loafSeen');
    const { entered } = place(hand);
    expect(leftForDays('proof.poke', entered, null, hand.now)).toBeNull();
    expect(leftForDays('proof.poke', entered, null, hand.now + 40 * HOUR)).toBe('loaves');
  });

  it('stand where they stood when the log is read again, a take-back included', () => {
    const hand = tight();
    hand.press('a', 'standOut');
    hand.turn(20);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('proof.look');
    hand.press('a', 'standOut');
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(kitchen.bakes['a']!.context.marks).toEqual(place(hand).marks);
  });
});

describe('loaves that are far over', () => {
  it.each(['proof.look', 'proof.poke'])('get a new goal from %s', (stage) => {
    const hand = tight();
    if (stage === 'proof.poke') {
      hand.press('a', 'standOut');
      hand.press('a', 'loafSeen');
    }
    expect(hand.stage('a')).toBe(stage);
    expect(hand.press('a', 'loafFlat')).toBe(true);
    expect(hand.stage('a')).toBe('rescue.tray');
  });
});
