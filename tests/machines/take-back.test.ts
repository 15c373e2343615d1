import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo } from './support/onward.ts';

/** Where everything stands, without the instants of entries and the silences. */
const stands = (hand: Hand) => {
  const { bakes, oven, lanes } = hand.fold.positionOf(hand.kitchen);
  return {
    bakes: Object.entries(bakes).map(([id, { stage, marks, answers, touches, readings }]) => {
      return [id, stage, marks, answers, touches, readings];
    }),
    oven: [oven.stage, oven.marks, oven.answers, oven.waiting, oven.out],
    lanes: Object.entries(lanes).map(([who, { stage, marks, answers, loaves }]) => {
      return [who, stage, marks, answers, loaves];
    }),
  };
};

type Way = readonly [stage: string, from: string, act: (hand: Hand) => boolean];
const WAYS: readonly Way[] = [
  ['read.plan', 'read.plan', (hand) => hand.press('a', 'readThrough')],
  ['levain.feed', 'levain.feed', (hand) => hand.answer('a', { seed: '40' })],
  ['levain.ripening', 'levain.feed', (hand) => hand.press('a', 'levainSeen')],
  ['mix.temperature', 'mix.first', (hand) => hand.dough('a', 26)],
  ['bulk.fold', 'mix.first', (hand) => hand.press('a', 'folded')],
  ['bulk.proving', 'mix.first', (hand) => hand.dough('a', 27)],
  ['bulk.look', 'mix.first', (hand) => hand.press('a', 'bulkNotYet')],
  ['bulk.look', 'mix.first', (hand) => hand.press('a', 'bulkReady')],
  ['bulk.look', 'mix.first', (hand) => hand.press('a', 'bulkOver')],
  ['proof.look', 'shape.divide', (hand) => hand.press('a', 'loafReady')],
  ['turnOn', 'oven.queued', (hand) => hand.press('oven', 'ovenOn')],
  ['before', 'oven.queued', (hand) => hand.answer('oven', { mitts: 'dry' })],
  ['load', 'oven.queued', (hand) => hand.press('oven', 'loaded', { loaves: ['a1'] })],
  ['lift', 'oven.queued', (hand) => hand.press('oven', 'lidOff')],
  ['judge', 'oven.queued', (hand) => hand.press('oven', 'crustNotYet')],
  ['unload', 'oven.queued', (hand) => hand.press('oven', 'unloaded')],
  ['turnOff', 'oven.queued', (hand) => hand.press('oven', 'ovenOff')],
  ['cool.note', 'oven.queued', (hand) => hand.press('a', 'noted')],
  ['lidded', 'oven.queued', (hand) => hand.press('a', 'ended')],
  ['shape.basket', 'shape.divide', (hand) => hand.start('b', 'bulk.proving')],
];

describe('a take-back restores what stood before, at once and minutes later', () => {
  it.each(WAYS)('at %s (joined at %s)', (stage, from, act) => {
    for (const later of [0, 3]) {
      const hand = at(new Hand(), stage, from);
      const before = stands(hand);
      expect(act(hand)).toBe(true);
      expect(stands(hand)).not.toEqual(before);
      hand.turn(later);
      const now = hand.now;
      expect(hand.takeBack()).toBe(true);
      expect(stands(hand)).toEqual(before);
      expect(hand.kitchen.now).toBe(now);
      expect(hand.replayed().trouble).toBeNull();
    }
  });

  it('goes back press by press to the very first, and no further', () => {
    const hand = at(new Hand(), 'cool.cooling');
    let taken = 0;
    while (hand.takeBack()) taken += 1;
    expect(taken).toBeGreaterThan(40);
    expect(hand.kitchen.bakes).toEqual({});
    expect(hand.stage('oven')).toBe('off');
  });

  it('takes the loaf’s verdict back, and the oven that nobody waits for goes off', () => {
    const hand = at(new Hand(), 'proof.look', 'proof.retard');
    hand.press('a', 'loafReady');
    expect(hand.stage('oven')).toBe('turnOn');
    hand.takeBack();
    expect(hand.stage('oven')).toBe('off');
    expect(hand.kitchen.oven.context.waiting).toEqual([]);
  });

  it('takes the latest press, of whichever machine', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    hand.start('b', 'bulk.fold');
    hand.turn(18);
    hand.press('b', 'folded');
    hand.press('oven', 'lidOff');
    expect(hand.takeBack()).toBe(true);
    expect([hand.stage('oven'), hand.stage('b')]).toEqual(['lift', 'bulk.between']);
    expect(hand.takeBack()).toBe(true);
    expect([hand.stage('oven'), hand.stage('b')]).toEqual(['lift', 'bulk.fold']);
  });

  it('is refused for any press but the latest that stands, and then changes nothing', () => {
    const hand = at(new Hand(), 'bulk.fold');
    const before = hand.kitchen;
    for (const { fact } of hand.records.slice(0, -1)) {
      expect(hand.do({ kind: 'takeBack', target: fact.id })).toBe(false);
    }
    expect(hand.do({ kind: 'takeBack', target: 'f99' })).toBe(false);
    expect(hand.kitchen).toBe(before);
  });

  it('of a press that cut a wait short lets the wait run on, and fall due at its own instant', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const look = hand.deadline('a')!;
    hand.press('a', 'doughSeen');
    hand.press('a', 'bulkReady');
    hand.turnTo(look + 12 * MINUTE);
    hand.takeBack();
    expect(hand.stage('a')).toBe('bulk.look');
    expect(hand.ringing).toBeNull();
    hand.takeBack();
    expect(hand.stage('a')).toBe('bulk.look');
    expect(hand.kitchen.bakes['a']!.context.entered['bulk.look']).toBe(look);
    expect(hand.ringing).toBe('a:bulk.look');
  });
});

describe('a take-back of "lid off"', () => {
  it('before its time arms the lid call again', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    const lid = hand.deadline('oven')!;
    hand.turn(5);
    hand.press('oven', 'lidOff');
    hand.turn(5);
    hand.takeBack();
    expect(hand.deadline('oven')).toBe(lid);
    expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt: lid, ringing: null });
    hand.turnTo(lid);
    expect(hand.ringing).toBe('lane.pot:lift');
  });

  it('once overdue rings, with the call it always was', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    const lid = hand.deadline('oven')!;
    hand.turn(5);
    hand.press('oven', 'lidOff');
    hand.turnTo(lid + 3 * MINUTE);
    hand.takeBack();
    expect(hand.ringing).toBe('lane.pot:lift');
    expect(hand.callId('oven')).toBe(`lane.pot:lift:${lid}`);
  });

  it('rings though it was hushed before, and can be hushed again', () => {
    const hand = at(new Hand(), 'lift', 'oven.queued');
    expect(hand.heard('oven')).toBe(true);
    expect(hand.ringing).toBeNull();
    hand.turn(1);
    hand.press('oven', 'lidOff');
    hand.turn(1);
    hand.takeBack();
    expect(hand.ringing).toBe('lane.pot:lift');
    expect(hand.heard('oven')).toBe(true);
    expect(hand.ringing).toBeNull();
    expect(hand.replayed().trouble).toBeNull();
  });

  it('rings at the next take-back too, and its second hush does not come back by itself', () => {
    const hand = at(new Hand(), 'lift', 'oven.queued');
    hand.heard('oven');
    hand.press('oven', 'lidOff');
    hand.takeBack();
    hand.heard('oven');
    hand.press('oven', 'lidOff');
    expect(hand.ringing).toBeNull();
    hand.takeBack();
    expect(hand.ringing).toBe('lane.pot:lift');
    hand.heard('oven');
    hand.turn(30);
    expect(hand.ringing).toBeNull();
  });
});

describe('after a take-back the bake goes on as if it had not been', () => {
  it('to its note, and a second log of the same presses ends alike', () => {
    const plain = walkTo(at(new Hand(), 'lift', 'oven.queued'), 'oven', 'unload');
    const hand = at(new Hand(), 'lift', 'oven.queued');
    hand.press('oven', 'lidOff');
    hand.takeBack();
    walkTo(hand, 'oven', 'unload');
    const { now, oven, bakes } = hand.fold.positionOf(hand.kitchen);
    const other = plain.fold.positionOf(plain.kitchen);
    expect({ now, oven, bakes }).toEqual({ now: other.now, oven: other.oven, bakes: other.bakes });
  });
});
