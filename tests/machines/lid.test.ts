import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { Hand } from './support/hand.ts';
import { at, stepOn } from './support/onward.ts';

const lidded = () => at(new Hand(), 'lidded', 'oven.queued');

describe('the lid', () => {
  it('calls hot, at its instant, once', () => {
    const hand = lidded();
    const lid = hand.deadline('oven')!;
    hand.turnTo(lid - 1);
    expect(hand.ringing).toBeNull();
    hand.turnTo(lid);
    const [call, ...more] = hand.fold.callsOf(hand.kitchen);
    expect(call).toMatchObject({ kind: 'hot', since: lid, who: 'lane.pot', stage: 'lift' });
    expect(more).toEqual([]);
    expect(hand.says.filter(({ stage }) => stage === 'lift')).toHaveLength(1);
    hand.turn(30);
    expect(hand.says.filter(({ stage }) => stage === 'lift')).toHaveLength(1);
  });

  it('taken off early never calls', () => {
    const hand = lidded();
    hand.turn(10);
    expect(hand.press('oven', 'lidOff')).toBe(true);
    hand.turn(15);
    expect(hand.stage('oven')).toBe('open');
    expect(hand.ringing).toBeNull();
    expect(hand.says.some(({ stage }) => stage === 'lift')).toBe(false);
  });

  it('reported late runs the open minutes from when it really came off', () => {
    const hand = lidded();
    hand.turn(25);
    const was = hand.now - 6 * MINUTE;
    expect(hand.press('oven', 'lidOff', { was })).toBe(true);
    expect(hand.stage('oven')).toBe('open');
    expect(hand.deadline('oven')).toBe(was + 20 * MINUTE);
    hand.takeBack();
    expect(hand.ringing).toBe('lane.pot:lift');
  });

  it('reported after the open minutes are over goes straight to the crust, and calls hot', () => {
    const hand = lidded();
    const was = hand.now + 10 * MINUTE;
    hand.turn(40);
    expect(hand.press('oven', 'lidOff', { was })).toBe(true);
    expect(hand.stage('oven')).toBe('judge');
    const { entered } = hand.kitchen.lanes['lane.pot']!.context;
    expect(entered['judge']).toBe(was + 20 * MINUTE);
    expect(hand.ringing).toBe('lane.pot:judge');
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['before the pot went in', -1],
    ['after it is reported', 12 * MINUTE + 1],
  ])('cannot have come off %s', (_, when) => {
    const hand = lidded();
    const loaded = hand.now;
    hand.turn(12);
    expect(hand.press('oven', 'lidOff', { was: loaded + when })).toBe(false);
    expect(hand.stage('oven')).toBe('lidded');
  });

  it('of the second load is not measured by the first', () => {
    const hand = lidded();
    const first = hand.now;
    while (hand.stage('oven') !== 'recover') stepOn(hand, 'oven');
    while (hand.stage('oven') !== 'lidded') stepOn(hand, 'oven');
    hand.turn(1);
    expect(hand.press('oven', 'lidOff', { was: first })).toBe(false);
    expect(hand.deadline('oven')).toBe(hand.now + 17 * MINUTE);
  });

  it('still calls when its bake is ended, and the oven goes on to unload and then off', () => {
    const hand = lidded();
    hand.turn(4);
    expect(hand.press('a', 'ended')).toBe(true);
    expect(loavesIn(hand.kitchen)).toEqual(['a1']);
    expect(hand.kitchen.oven.context).toMatchObject({ waiting: [] });
    hand.turn(14);
    expect(hand.ringing).toBe('lane.pot:lift');
    hand.press('oven', 'lidOff');
    expect(hand.deadline('oven')).toBe(hand.now + 20 * MINUTE);
    hand.turn(20);
    expect(hand.ringing).toBe('lane.pot:judge');
    hand.press('oven', 'crustReady');
    hand.press('oven', 'unloaded');
    expect(hand.stage('oven')).toBe('turnOff');
    hand.press('oven', 'ovenOff');
    expect(hand.kitchen.oven.context).toMatchObject({ out: [], waiting: [] });
    expect(hand.replayed().trouble).toBeNull();
  });

  it('cannot be loaded over: a second load waits till the first is out', () => {
    const hand = lidded();
    for (const stage of ['lidded', 'lift', 'open', 'judge', 'unload']) {
      while (hand.stage('oven') !== stage) stepOn(hand, 'oven');
      expect(hand.press('oven', 'loaded', { loaves: ['a2'] })).toBe(false);
      expect(hand.press('oven', 'ovenOff')).toBe(false);
    }
  });
});
