import { describe, expect, it } from 'vitest';
import { starterWait } from '../../src/core/day/starter-wait.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../src/core/readiness/belief.ts';
import type { StarterDeed } from '../../src/core/records/starter.ts';
import { MINUTE } from '../../src/core/units.ts';
import { bakesTaught } from '../../machines/kitchen/last-belief.ts';
import { starterBelief } from '../../machines/kitchen/starter-result.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo } from './support/onward.ts';
import { STARTER_WAITS } from './support/waits.ts';

const FED: StarterDeed = { did: 'fed', flour: 2, celsius: 24 };
const starterOf = (hand: Hand) => hand.kitchen.starter;

describe('the starter between bakes', () => {
  it('is fed, stands on the counter, and asks for a look when it is ripe', () => {
    const hand = new Hand();
    expect(hand.tend(FED)).toBe(true);
    const fed = hand.now;
    expect(starterOf(hand)).toMatchObject({
      fed: { at: fed, flour: 2, celsius: 24 },
      put: { at: fed, where: 'counter' },
    });
    const due = fed + STARTER_WAITS.counter * MINUTE;
    expect(hand.fold.wanted(hand.kitchen)).toEqual({ alarmAt: due, ringing: null });
    hand.turnTo(due);
    expect(hand.ringing).toBe('starter:counter');
    expect(hand.says.at(-1)).toEqual({ who: 'starter', stage: 'counter' });
    hand.heard('starter');
    expect(hand.ringing).toBeNull();
    expect(hand.fold.callsOf(hand.kitchen)).toHaveLength(1);
    hand.tend(FED);
    expect(hand.fold.callsOf(hand.kitchen)).toEqual([]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('waits in the fridge without a sound: its call stands, and nothing rings or is said', () => {
    const hand = new Hand();
    hand.tend({ did: 'put', where: 'fridge' });
    hand.turn(STARTER_WAITS.fridge);
    expect(hand.fold.callsOf(hand.kitchen)).toMatchObject([
      { who: 'starter', stage: 'fridge', kind: 'look', quiet: true },
    ]);
    expect([hand.ringing, hand.says]).toEqual([null, []]);
    expect(hand.heard('starter')).toBe(false);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is put off by a week at most, only while it calls, and calls again then', () => {
    const hand = new Hand();
    hand.tend(FED);
    const later = (days: number) =>
      hand.tend({ did: 'later', until: hand.now + days * 24 * 60 * MINUTE });
    expect(later(1)).toBe(false);
    hand.turn(STARTER_WAITS.counter);
    expect([later(8), later(0), later(1)]).toEqual([false, false, true]);
    expect(hand.ringing).toBeNull();
    hand.turn(24 * 60);
    expect(hand.ringing).toBe('starter:counter');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is taken back press by press: a feed taken back calls again', () => {
    const hand = new Hand();
    hand.tend(FED);
    hand.turn(STARTER_WAITS.counter + 5);
    hand.heard('starter');
    hand.tend({ did: 'fed', flour: 5, celsius: 24 });
    expect(hand.takeBack()).toBe(true);
    expect(starterOf(hand).fed?.flour).toBe(2);
    expect(hand.ringing).toBe('starter:counter');
    expect(hand.takeBack()).toBe(true);
    expect(starterOf(hand)).toEqual({ signs: [], marks: {} });
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is what a bake kept back, in the fridge, fed when its levain was', () => {
    const hand = at(new Hand(), 'levain.ripe', 'levain.feed');
    const fed = hand.kitchen.bakes['a']!.context.entered['levain.feed'];
    hand.press('a', 'starterKept', { grams: 30 });
    expect(starterOf(hand)).toMatchObject({
      kept: { at: hand.now, grams: 30 },
      fed: { at: fed, celsius: 24 },
      put: { at: hand.now, where: 'fridge' },
    });
    expect(hand.stage('a')).toBe('mix.weigh');
    expect(hand.replayed().trouble).toBeNull();
    hand.takeBack();
    expect(starterOf(hand)).toEqual({ signs: [], marks: {} });
  });

  it('is not told by an older log’s press, which did not say how much', () => {
    const hand = at(new Hand(), 'levain.ripe', 'levain.feed');
    hand.press('a', 'starterKept');
    expect(starterOf(hand)).toEqual({ signs: [], marks: {} });
  });

  it('runs on over a jump, and no bake may have its name', () => {
    const hand = new Hand();
    hand.tend(FED);
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    hand.turn(STARTER_WAITS.counter);
    expect(hand.ringing).toBe('starter:counter');
    expect(hand.start('starter')).toBe(false);
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each<[string, object]>([
    ['no feed', { did: 'fed', flour: 0, celsius: 24 }],
    ['a feed in no kitchen', { did: 'fed', flour: 1, celsius: Number.NaN }],
    ['a place there is not', { did: 'put', where: 'cellar' }],
    ['less than nothing', { did: 'kept', grams: -1 }],
    ['no name', { did: 'named', name: '' }],
    ['what nobody does', { did: 'sung' }],
    ['a rise that no feed began', { did: 'rose', percent: 50 }],
  ])('%s is refused', (_, deed) => {
    const hand = new Hand();
    expect(hand.tend(deed as StarterDeed)).toBe(false);
    expect(hand.records).toEqual([]);
  });
});

describe('what bakes taught of the starter', () => {
  /** A bake whose dough rose quickly. */
  const taught = (hand: Hand, bake: string): Hand => {
    hand.start(bake, 'levain.feed');
    walkTo(hand, bake, 'bulk.proving', bake);
    hand.turn(60);
    hand.measure(bake, { what: 'rise', percent: 90, of: 'dough' });
    hand.press(bake, 'ended');
    return hand;
  };
  const real = () => new Hand({ wait: waitFor, starter: starterWait });

  it('is counted by bakes, and forgotten with the starter, not the bakes', () => {
    const hand = taught(taught(real(), 'a'), 'b');
    hand.start('c');
    hand.press('c', 'ended');
    expect(bakesTaught(hand.kitchen)).toBe(2);
    const before = starterBelief(hand.kitchen, { id: '', at: hand.now });
    expect(before.mean).toBeGreaterThan(0.05);
    hand.turn(1);
    hand.tend({ did: 'renewed' });
    expect(bakesTaught(hand.kitchen)).toBe(0);
    expect(starterBelief(hand.kitchen, { id: '', at: hand.now })).toEqual(OPENING_BELIEF);
    hand.turn(1);
    hand.start('d');
    expect(hand.kitchen.bakes['d']!.context.belief).toEqual(OPENING_BELIEF);
    hand.press('d', 'ended');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is known again when the forgetting is taken back', () => {
    const hand = taught(real(), 'a');
    const known = starterBelief(hand.kitchen, { id: '', at: hand.now });
    hand.turn(1);
    hand.tend({ did: 'renewed' });
    hand.takeBack();
    expect(starterBelief(hand.kitchen, { id: '', at: hand.now })).toEqual(known);
  });

  it('by two looks after a feed it teaches the next bake by itself, each look weighed once', () => {
    const hand = real();
    hand.turn(9 * 60);
    hand.tend({ did: 'fed', flour: 1, celsius: 24 });
    hand.turn(5 * 60);
    hand.tend({ did: 'rose', percent: 40 });
    expect(starterOf(hand).weighed).toBeUndefined();
    hand.turn(4 * 60);
    hand.tend({ did: 'topped', top: 'domed' });
    const first = starterOf(hand).weighed!.belief;
    expect(first.mean).toBeLessThan(-0.1);
    hand.start('a');
    expect(hand.kitchen.bakes['a']!.context.belief.mean).toBe(first.mean);
    hand.press('a', 'ended');
    // The same again after another feed begins from there.
    hand.tend({ did: 'fed', flour: 1, celsius: 24 });
    expect(starterOf(hand).weighed).toBeUndefined();
    hand.start('b');
    expect(hand.kitchen.bakes['b']!.context.belief.mean).toBe(first.mean);
    hand.press('b', 'ended');
    expect(hand.replayed().trouble).toBeNull();
    hand.turn(1);
    hand.tend({ did: 'renewed' });
    expect(starterBelief(hand.kitchen, { id: '', at: hand.now })).toEqual(OPENING_BELIEF);
  });

  it('times its feed: a starter known as quick is ripe sooner than an unknown one', () => {
    const quick = taught(real(), 'a');
    const unknown = real();
    const ripeIn = (hand: Hand): number => {
      hand.tend(FED);
      return starterOf(hand).marks['likely']! - hand.now;
    };
    expect(ripeIn(quick)).toBeLessThan(ripeIn(unknown));
  });
});
