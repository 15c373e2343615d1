import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { RECIPE, TIN } from './support/recipe.ts';
import { walkTo } from './support/onward.ts';

const LANES = ['lane.left', 'lane.right'];

/** A kitchen whose oven heats with these pots, the first loaf looked at. */
const heated = (loaves: readonly string[], lanes: readonly string[] = LANES): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', [...loaves]);
  expect(hand.press('oven', 'ovenOn', { lanes })).toBe(true);
  return walkTo(hand, 'oven', 'poke');
};

const stage = (hand: Hand, lane: string) =>
  hand.kitchen.lanes[lane] ? hand.fold.stageOf(hand.kitchen.lanes[lane]) : null;
const oven = (hand: Hand) => hand.fold.stageOf(hand.kitchen.oven);

const fill = (hand: Hand, lane: string, loaf = hand.kitchen.oven.context.waiting[0]!): void => {
  walkTo(hand, 'oven', 'load');
  expect(hand.press('oven', 'loaded', { loaves: [loaf], lane })).toBe(true);
};

const takeOut = (hand: Hand, lane: string): void => {
  for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded']) {
    expect([act, hand.press(lane, act)]).toEqual([act, true]);
  }
};

/** Said of the oven itself, whatever its lanes are at. */
const drop = (hand: Hand, item: string): boolean =>
  hand.do({ kind: 'press', who: 'oven', act: 'potOut', item });

/** The log as a program of that machine version left it: it knew of no turn that is said freely. */
const asWritten = ({ records }: Hand, machineVersion: number): object[] =>
  records.map((record) => {
    const { freely: _, ...fact } = record.fact as Extract<Fact, { kind: 'press' }>;
    return { ...record, fact, machineVersion };
  });

const replays = (hand: Hand): void => {
  expect(hand.replayed().trouble).toBeNull();
};

describe('pots of one oven', () => {
  it('loaded three minutes apart are called three minutes apart, each for itself', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    fill(hand, 'lane.left');
    const first = hand.now;
    hand.turn(3);
    fill(hand, 'lane.right');
    expect([stage(hand, 'lane.left'), stage(hand, 'lane.right')]).toEqual(['lidded', 'lidded']);
    expect(oven(hand)).toBe('baking');
    const lid = hand.deadline('lane.left')! - first;
    expect(hand.deadline('lane.right')! - first).toBe(lid + 3 * MINUTE);
    hand.turnTo(first + lid);
    expect(hand.ringing).toBe('lane.left:lift');
    hand.turn(3);
    expect(hand.fold.callsOf(hand.kitchen).map(({ who }) => who)).toEqual(LANES);
    expect(hand.press('lane.right', 'lidOff')).toBe(true);
    expect([stage(hand, 'lane.left'), stage(hand, 'lane.right')]).toEqual(['lift', 'open']);
    replays(hand);
  });

  it('never hold more than one loaf each, nor one that is full, nor one that is not there', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    walkTo(hand, 'oven', 'load');
    const load = (loaves: string[], lane: string) => hand.press('oven', 'loaded', { loaves, lane });
    expect(load(['a1', 'a2'], 'lane.left')).toBe(false);
    expect(load(['a1'], 'lane.middle')).toBe(false);
    expect(load(['a1'], 'lane.left')).toBe(true);
    walkTo(hand, 'oven', 'load');
    expect(load(['a2'], 'lane.left')).toBe(false);
    expect(load(['a1'], 'lane.right')).toBe(false);
    expect(loavesIn(hand.kitchen)).toEqual(['a1']);
    replays(hand);
  });

  it('are filled again one by one as they are hot, while the others bake on', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    fill(hand, 'lane.left');
    hand.turn(3);
    fill(hand, 'lane.right');
    hand.turn(16);
    takeOut(hand, 'lane.left');
    expect([stage(hand, 'lane.left'), oven(hand)]).toEqual(['recover', 'baking']);
    hand.turnTo(hand.deadline('lane.left')!);
    expect([stage(hand, 'lane.left'), oven(hand)]).toEqual([null, 'poke']);
    expect(hand.fold.callsOf(hand.kitchen).some(({ who }) => who === 'oven')).toBe(true);
    fill(hand, 'lane.left');
    expect(loavesIn(hand.kitchen).toSorted()).toEqual(['a2', 'a3']);
    replays(hand);
  });

  it('go through the list before the oven once, and are turned off after the last loaf', () => {
    const hand = heated(['a1', 'a2']);
    fill(hand, 'lane.left');
    expect(oven(hand)).toBe('poke');
    hand.press('oven', 'pokeReady');
    expect(oven(hand)).toBe('score');
    fill(hand, 'lane.right');
    takeOut(hand, 'lane.left');
    expect(oven(hand)).toBe('baking');
    takeOut(hand, 'lane.right');
    expect([oven(hand), hand.kitchen.lanes]).toEqual(['turnOff', {}]);
    expect(hand.stage('a')).toBe('cool.cooling');
    hand.press('oven', 'ovenOff');
    expect(hand.kitchen.oven.context).toMatchObject({ out: [], waiting: [] });
    expect(hand.kitchen.oven.context.lanes).toBeUndefined();
    replays(hand);
  });

  it('leave a sluggish loaf for later, and let only the last ones stand out', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    expect(hand.press('oven', 'pokeNotYet')).toBe(true);
    expect(oven(hand)).toBe('poke');
    expect(hand.kitchen.oven.context.waiting).toEqual(['a2', 'a3', 'a1']);
    fill(hand, 'lane.left');
    fill(hand, 'lane.right');
    expect(loavesIn(hand.kitchen)).toEqual(['a2', 'a3']);
    takeOut(hand, 'lane.left');
    hand.turnTo(hand.deadline('lane.left')!);
    expect(hand.press('oven', 'pokeNotYet')).toBe(true);
    expect(oven(hand)).toBe('standing');
    // Taken back, it is at the door again.
    expect(hand.takeBack()).toBe(true);
    expect(oven(hand)).toBe('poke');
    replays(hand);
  });

  it('look at a loaf that is said to go first, though the last ones stand out', () => {
    const hand = heated(['a1', 'a2']);
    hand.press('oven', 'pokeNotYet');
    hand.press('oven', 'pokeNotYet');
    expect(oven(hand)).toBe('standing');
    expect(hand.press('oven', 'loafFirst', { item: 'a2' })).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting[0]]).toEqual(['poke', 'a2']);
    expect(hand.takeBack()).toBe(true);
    expect(oven(hand)).toBe('standing');
    replays(hand);
  });

  it('take a loaf that is far on before the others, and say so by one press', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    expect(hand.press('oven', 'loafFirst', { item: 'a3' })).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a3', 'a1', 'a2']);
    expect(hand.press('oven', 'loafLater', { item: 'a1' })).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a3', 'a2', 'a1']);
    expect(hand.press('oven', 'loafFirst', { item: 'b1' })).toBe(false);
    replays(hand);
  });

  it('take a loaf that was looked at before any other, whatever is said of their turns', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    const refused = (): void => {
      const { kitchen } = hand;
      const written = hand.records.length;
      expect(hand.press('oven', 'loafFirst', { item: 'a3' })).toBe(false);
      expect(hand.press('oven', 'loafLater', { item: 'a1' })).toBe(false);
      expect([hand.kitchen === kitchen, hand.records.length]).toEqual([true, written]);
    };
    hand.answer('oven', { dent: 'slowly' });
    refused();
    hand.press('oven', 'pokeReady');
    for (const at of ['before', 'score', 'load']) {
      walkTo(hand, 'oven', at);
      refused();
    }
    // Those behind it may change places, and it may be said again that it is the first.
    expect(hand.press('oven', 'loafLater', { item: 'a2' })).toBe(true);
    expect(hand.press('oven', 'loafFirst', { item: 'a1' })).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting]).toEqual(['load', ['a1', 'a3', 'a2']]);
    fill(hand, 'lane.left', 'a1');
    expect(hand.press('oven', 'loafFirst', { item: 'a2' })).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a2', 'a3']);
    replays(hand);
  });

  it('of an older log were filled in any turn, up to the door', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    walkTo(hand, 'oven', 'load');
    expect(hand.press('oven', 'loafFirst', { item: 'a3', freely: true })).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting[0]]).toEqual(['load', 'a3']);
    fill(hand, 'lane.left', 'a3');
    const older = asWritten(hand, 10);
    expect(JSON.stringify(older)).not.toContain('freely');
    const read = (rows: readonly object[]): LogRecord[] =>
      rows.map((row) => readRecord(row, MACHINE_VERSION).record!);
    expect(replay(read(older), hand.machines).trouble).toBeNull();
    // Written today, the same press is none.
    const turn = older.findIndex((row) => JSON.stringify(row).includes('loafFirst')) + 1;
    const today = read(asWritten(hand, MACHINE_VERSION));
    expect(replay(today, hand.machines).trouble?.seq).toBe(turn);
  });

  it('may drop out, full or empty, but for the last one', () => {
    const hand = heated(['a1', 'a2', 'a3']);
    fill(hand, 'lane.left');
    fill(hand, 'lane.right');
    expect(drop(hand, 'lane.right')).toBe(true);
    expect(drop(hand, 'lane.left')).toBe(false);
    takeOut(hand, 'lane.right');
    expect([stage(hand, 'lane.right'), oven(hand)]).toEqual([null, 'baking']);
    takeOut(hand, 'lane.left');
    hand.turnTo(hand.deadline('lane.left')!);
    walkTo(hand, 'oven', 'load');
    expect(hand.press('oven', 'loaded', { loaves: ['a3'], lane: 'lane.right' })).toBe(false);
    fill(hand, 'lane.left');
    replays(hand);
  });

  it('are not turned on without one, or with one twice', () => {
    for (const lanes of [[], ['lane.left', 'lane.left'], ['left']]) {
      const hand = new Hand();
      hand.start('a', 'oven.queued');
      expect(hand.press('oven', 'ovenOn', { lanes })).toBe(false);
      expect(oven(hand)).toBe('turnOn');
    }
  });

  it('are all out before tins go in, and tins before pots', () => {
    const hand = heated(['a1']);
    hand.start('b', 'oven.queued', ['b1', 'b2'], TIN);
    fill(hand, 'lane.left');
    expect(oven(hand)).toBe('baking');
    takeOut(hand, 'lane.left');
    hand.turnTo(hand.deadline('lane.left')!);
    walkTo(hand, 'oven', 'load', 'b');
    expect(hand.press('oven', 'loaded', { loaves: ['b1', 'b2'] })).toBe(true);
    expect(stage(hand, 'lane.pot')).toBe('open');
    hand.start('c', 'oven.queued', ['c1'], RECIPE);
    expect(oven(hand)).toBe('baking');
    replays(hand);
  });

  it('finish a loaf on the bare rack for five minutes, once', () => {
    const hand = heated(['a1']);
    fill(hand, 'lane.left');
    hand.press('lane.left', 'lidOff');
    hand.press('lane.left', 'colourSeen');
    expect(hand.press('lane.left', 'crustOnRack')).toBe(true);
    expect(hand.kitchen.lanes['lane.left']!.context.onRack).toBe(true);
    hand.press('lane.left', 'colourSeen');
    expect(hand.press('lane.left', 'crustOnRack')).toBe(false);
    expect(hand.press('lane.left', 'crustReady')).toBe(true);
    replays(hand);
  });
});
