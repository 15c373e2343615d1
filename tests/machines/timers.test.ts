import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';

const set = (hand: Hand, timer: string, minutes: number, extra: object = {}): boolean =>
  hand.do({
    kind: 'timer',
    timer,
    name: 'tea',
    until: hand.now + minutes * MINUTE,
    call: 'act',
    ...extra,
  });

describe('a timer of one’s own', () => {
  it('calls at its instant, is hushed, and stands until it is stopped', () => {
    const hand = new Hand();
    expect(set(hand, 't1', 10, { call: 'hot' })).toBe(true);
    const until = hand.now + 10 * MINUTE;
    expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt: until, ringing: null });
    hand.turn(9);
    expect(hand.ringing).toBeNull();
    hand.turn(1);
    expect(hand.fold.wanted(hand.kitchen).ringing).toEqual({
      id: `timer:t1:${until}`,
      who: 'timer',
      stage: 't1',
      kind: 'hot',
      since: until,
    });
    expect(hand.says.at(-1)).toEqual({ who: 'timer', stage: 't1' });
    expect(hand.heard('timer')).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.fold.callsOf(hand.kitchen)).toHaveLength(1);
    expect(hand.do({ kind: 'timerOff', timer: 't1' })).toBe(true);
    expect(hand.fold.callsOf(hand.kitchen)).toEqual([]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is withdrawn by a take-back, and so is its stop: then it calls again', () => {
    const hand = new Hand();
    set(hand, 't1', 5);
    expect(hand.takeBack()).toBe(true);
    expect(hand.kitchen.timers).toEqual({});
    set(hand, 't2', 5);
    hand.turn(6);
    hand.heard('timer');
    hand.do({ kind: 'timerOff', timer: 't2' });
    expect(hand.takeBack()).toBe(true);
    expect(hand.ringing).toBe('timer:t2');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('runs on over a jump', () => {
    const hand = new Hand();
    set(hand, 't1', 5);
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    hand.turn(5);
    expect(hand.ringing).toBe('timer:t1');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('calls with another of the same second, the hot one first, both standing', () => {
    const hand = new Hand();
    set(hand, 't1', 5);
    set(hand, 't2', 5, { call: 'hot' });
    hand.start('a', 'mix.first');
    hand.turn(5);
    expect(hand.ringing).toBe('timer:t2');
    expect(hand.fold.callsOf(hand.kitchen).map(({ stage }) => stage)).toEqual(['t1', 't2']);
    hand.heard('timer');
    expect(hand.stage('a')).toBe('mix.first');
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['no name', { name: '' }],
    ['no id', { timer: '' }],
    ['an end that is past', { until: 1 }],
    ['an end days away', { until: 1e15 }],
    ['an end that is no instant', { until: Number.NaN }],
    ['a call that is none', { call: 'shout' }],
  ])('with %s is refused', (_, wrong) => {
    const hand = new Hand();
    expect(set(hand, 't1', 5, wrong)).toBe(false);
    expect([hand.kitchen.timers, hand.records]).toEqual([{}, []]);
  });

  it('is one of eight at most, each its own, and only one that is there is stopped', () => {
    const hand = new Hand();
    const taken = Array.from({ length: 1000 }, (_, i) => set(hand, `t${i}`, 5));
    expect(taken.filter(Boolean)).toHaveLength(8);
    hand.do({ kind: 'timerOff', timer: 't0' });
    expect(set(hand, 't1', 5)).toBe(false);
    expect(hand.do({ kind: 'timerOff', timer: 't0' })).toBe(false);
    expect(set(hand, 't0', 5)).toBe(true);
  });
});
