import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';

/** The last load is out, and the oven still on. */
const leftOn = (): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1']);
  return walkTo(hand, 'oven', 'turnOff');
};
const calls = (hand: Hand) => hand.says.filter(({ stage }) => stage === 'turnOff').length;

describe('an oven that is still on after the last load', () => {
  it('calls ten minutes after the press that led there', () => {
    const hand = leftOn();
    const since = hand.now;
    expect(hand.ringing).toBeNull();
    hand.turnTo(since + 10 * MINUTE - 1);
    expect(hand.ringing).toBeNull();
    hand.says = [];
    hand.turnTo(since + 10 * MINUTE);
    expect(hand.ringing).toBe('oven:turnOff');
    expect(calls(hand)).toBe(1);
    expect(hand.fold.callsOf(hand.kitchen)).toMatchObject([{ kind: 'act', since: hand.now }]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('calls again ten minutes after it was hushed, or put off', () => {
    const hand = leftOn();
    hand.turn(10);
    hand.heard('oven');
    expect(hand.ringing).toBeNull();
    hand.turn(10);
    expect(hand.ringing).toBe('oven:turnOff');
    expect(hand.snooze('oven')).toBe(true);
    hand.turn(2);
    expect(hand.ringing).toBe('oven:turnOff');
    hand.heard('oven');
    hand.turn(8);
    expect(hand.ringing).toBe('oven:turnOff');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is silent once it is off, and asks no more after two hours', () => {
    const hand = leftOn();
    hand.turn(9);
    hand.press('oven', 'ovenOff');
    hand.turn(60);
    expect([hand.ringing, calls(hand)]).toEqual([null, 1]);
    const left = leftOn();
    const since = left.now;
    const heard = new Set<number>();
    for (let minute = 0; minute < 600; minute += 1) {
      left.turn(1);
      const [call] = left.fold.callsOf(left.kitchen).filter(({ stage }) => stage === 'turnOff');
      if (call) heard.add((call.since - since) / MINUTE);
    }
    expect([...heard]).toEqual([10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120]);
    left.turn(600);
    expect(left.ringing).toBe('oven:turnOff');
  });
});
