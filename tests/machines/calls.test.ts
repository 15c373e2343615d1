import { describe, expect, it } from 'vitest';
import type { Fact } from '../../src/core/records/fact.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

/** A bake whose dough is to be looked at, and calls. */
const looking = () => {
  const hand = at(new Hand(), 'bulk.proving');
  hand.turnTo(hand.deadline('a')!);
  return hand;
};

describe('a call', () => {
  it('comes from time alone: a baker who went to look by herself is not called', () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.press('a', 'doughSeen');
    expect(hand.stage('a')).toBe('bulk.look');
    expect(hand.ringing).toBeNull();
  });

  it('stays pending when it is silenced, until its act is done', () => {
    const hand = looking();
    expect(hand.heard('a')).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.fold.callsOf(hand.kitchen)).toHaveLength(1);
    hand.press('a', 'bulkReady');
    expect(hand.fold.callsOf(hand.kitchen)).toEqual([]);
  });

  it('is silenced once, and never where it does not ring', () => {
    const hand = looking();
    expect(hand.heard('nobody')).toBe(false);
    expect(hand.heard('a')).toBe(true);
    expect(hand.heard('a')).toBe(false);
  });

  it('silenced leaves a different one ringing', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    hand.start('b', 'proof.counter');
    hand.turn(20);
    expect(hand.ringing).toBe('lane.pot:lift');
    hand.heard('oven');
    expect(hand.ringing).toBe('b:proof.toFridge');
    hand.turn(1);
    expect(hand.heard('oven')).toBe(false);
    hand.heard('b');
    expect(hand.ringing).toBeNull();
    expect(hand.fold.callsOf(hand.kitchen)).toHaveLength(2);
  });

  it('silenced is a new call the next time the same look comes round', () => {
    const hand = looking();
    hand.heard('a');
    hand.press('a', 'bulkNotYet');
    hand.turnTo(hand.deadline('a')!);
    expect(hand.ringing).toBe('a:bulk.look');
  });

  it('hot goes before act, act before look, and of equals the older', () => {
    const hand = new Hand();
    hand.start('l', 'bulk.proving');
    hand.turn(150);
    hand.start('k', 'proof.counter');
    hand.turn(12);
    at(hand, 'lidded', 'oven.queued');
    const order: (string | null)[] = [];
    hand.turn(30);
    for (const who of ['oven', 'k', 'l']) {
      order.push(hand.ringing);
      hand.heard(who);
    }
    expect(order).toEqual(['lane.pot:lift', 'k:proof.toFridge', 'l:bulk.look']);
    expect(hand.ringing).toBeNull();
  });
});

describe('a call put off', () => {
  it('is quiet for its minutes, then rings again; twice, then no more', () => {
    const hand = looking();
    for (const _ of [1, 2]) {
      expect(hand.snooze('a')).toBe(true);
      expect(hand.ringing).toBeNull();
      expect(hand.fold.wanted(hand.kitchen).alarmAt).toBe(hand.now + 2 * MINUTE);
      expect(hand.snooze('a')).toBe(false);
      hand.turn(2);
      expect(hand.ringing).toBe('a:bulk.look');
    }
    expect(hand.snooze('a')).toBe(false);
    expect(hand.heard('a')).toBe(true);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('was silenced first, as the first touch does', () => {
    const hand = looking();
    hand.heard('a');
    hand.turn(1);
    expect(hand.snooze('a')).toBe(true);
    expect(hand.fold.wanted(hand.kitchen)).toEqual({
      alarmAt: hand.now + 2 * MINUTE,
      ringing: null,
    });
    hand.turn(2);
    expect(hand.ringing).toBe('a:bulk.look');
    expect(hand.heard('a')).toBe(true);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is said again as it rings again, and no other', () => {
    const hand = looking();
    hand.start('b', 'proof.counter');
    hand.turn(20);
    expect(hand.ringing).toBe('b:proof.toFridge');
    hand.snooze('a');
    const { says } = hand.fold.advance(hand.kitchen, hand.machines, hand.now + 2 * MINUTE);
    expect(says).toEqual([{ who: 'a', stage: 'bulk.look' }]);
  });

  it('is what a take-back withdraws while it lasts: it calls now', () => {
    const hand = looking();
    hand.heard('a');
    const before = hand.fold.takeBackTarget(hand.kitchen)!.id;
    hand.snooze('a');
    hand.turn(1);
    expect(hand.fold.takeBackTarget(hand.kitchen)?.kind).toBe('snoozed');
    const target = hand.fold.takeBackTarget(hand.kitchen)!.id;
    const fact = { kind: 'takeBack', target, id: 't', device: 'test', at: hand.now, raw: hand.now };
    expect(hand.fold.apply(hand.kitchen, hand.machines, fact as Fact).says).toEqual([
      { who: 'a', stage: 'bulk.look' },
    ]);
    expect(hand.takeBack()).toBe(true);
    expect(hand.ringing).toBe('a:bulk.look');
    expect(hand.fold.takeBackTarget(hand.kitchen)!.id).toBe(before);
    // It was never put off: twice are left.
    expect([1, 2].map(() => (hand.snooze('a'), hand.turn(2), hand.ringing))).toEqual([
      'a:bulk.look',
      'a:bulk.look',
    ]);
    expect(hand.snooze('a')).toBe(false);
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['it rings again', (hand: Hand) => hand.turn(2)],
    ['its act is done', (hand: Hand) => hand.press('a', 'bulkReady')],
  ])('is no press to take back once %s', (_, then) => {
    const hand = looking();
    hand.snooze('a');
    then(hand);
    expect(hand.fold.takeBackTarget(hand.kitchen)?.kind).not.toBe('snoozed');
    expect(hand.takeBack()).toBe(true);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('a take-back made after it rang again withdraws what was before it, though no tick came between', () => {
    const hand = looking();
    hand.snooze('a');
    const before = hand.fold.takeBackTarget(hand.kitchen);
    expect(before?.kind).toBe('snoozed');
    const late = { kind: 'takeBack', target: before!.id } as const;
    const at = hand.now + 2 * MINUTE;
    const fact = { ...late, id: 'late', device: 'test', at, raw: at };
    expect(hand.fold.apply(hand.kitchen, hand.machines, fact).taken).toBe(false);
  });

  it.each([
    ['no time', 0],
    ['the past', -1],
    ['more than two minutes', 2.01],
  ])('to %s is refused', (_, minutes) => {
    const hand = looking();
    expect(hand.snooze('a', minutes)).toBe(false);
    expect(hand.ringing).toBe('a:bulk.look');
  });

  it.each(['lift', 'judge'])('hot (%s) is never', (stage) => {
    const hand = at(new Hand(), stage, 'oven.queued');
    expect(hand.ringing).toBe(`lane.pot:${stage}`);
    expect(hand.snooze('oven')).toBe(false);
    expect(hand.ringing).toBe(`lane.pot:${stage}`);
  });

  it('and done meanwhile leaves no alarm behind', () => {
    const hand = looking();
    hand.snooze('a');
    hand.press('a', 'bulkReady');
    expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt: null, ringing: null });
  });

  it('twice stays twice through a take-back, which wakes it', () => {
    const hand = looking();
    hand.snooze('a');
    hand.turn(2);
    hand.snooze('a');
    hand.press('a', 'bulkReady');
    hand.takeBack();
    expect(hand.ringing).toBe('a:bulk.look');
    expect(hand.snooze('a')).toBe(false);
    hand.press('a', 'bulkReady');
    hand.takeBack();
    expect(hand.snooze('a')).toBe(false);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('after a take-back that woke it counts as well', () => {
    const hand = looking();
    hand.snooze('a');
    hand.press('a', 'bulkReady');
    hand.takeBack();
    expect(hand.snooze('a')).toBe(true);
    hand.press('a', 'bulkReady');
    hand.takeBack();
    expect(hand.snooze('a')).toBe(false);
  });
});
