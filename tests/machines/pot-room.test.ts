import { describe, expect, it } from 'vitest';
import { Hand } from './support/hand.ts';
import { bakeOn } from './support/lanes-onward.ts';
import { walkTo } from './support/onward.ts';
import { RECIPE } from './support/recipe.ts';

const LANES = ['lane.left', 'lane.right'];
/** The left pot takes the light loaves, the right one the heavy ones too. */
const HOLDS = { 'lane.left': 700, 'lane.right': 1200 };
const LIGHT = { ...RECIPE, piece: 600, loaves: 2 };

/** Heavy loaves came first, then light ones; the oven is hot. */
const hot = (heavy: readonly string[], light: readonly string[], holds: object = HOLDS): Hand => {
  const hand = new Hand();
  if (heavy.length > 0) hand.start('a', 'oven.queued', [...heavy]);
  if (light.length > 0) hand.start('b', 'oven.queued', [...light], LIGHT);
  expect(hand.press('oven', 'ovenOn', { lanes: LANES, holds })).toBe(true);
  return walkTo(hand, 'oven', 'poke', heavy.length > 0 ? 'a' : 'b');
};
const oven = (hand: Hand): string => hand.fold.stageOf(hand.kitchen.oven);
const first = (hand: Hand): string | undefined => hand.kitchen.oven.context.waiting[0];
/** The loaf at the door into the pot that is meant for it: none is named. */
const fill = (hand: Hand): string => {
  walkTo(hand, 'oven', 'load', Object.keys(hand.kitchen.bakes)[0]);
  expect(hand.press('oven', 'loaded', { loaves: [first(hand)] })).toBe(true);
  return Object.keys(hand.kitchen.lanes).at(-1)!;
};
const empty = (hand: Hand, lane: string): void => {
  for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded']) hand.press(lane, act);
};

describe('a pot too small for a loaf', () => {
  it('is left for one that it has room for, while a larger one is there', () => {
    const hand = hot(['a1', 'a2'], ['b1']);
    expect(fill(hand)).toBe('lane.right');
    // The next heavy one waits for the large pot; the light one behind it goes in now.
    expect([oven(hand), first(hand)]).toEqual(['poke', 'b1']);
    expect(fill(hand)).toBe('lane.left');
    expect(oven(hand)).toBe('baking');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('stays empty where only loaves wait that are too big for it', () => {
    const hand = hot(['a1', 'a2'], []);
    fill(hand);
    expect(oven(hand)).toBe('baking');
    empty(hand, 'lane.right');
    expect(oven(hand)).toBe('baking');
    hand.press('lane.right', 'ovenHot');
    expect([oven(hand), first(hand)]).toEqual(['poke', 'a2']);
    expect(fill(hand)).toBe('lane.right');
  });

  it('is not heated again for loaves that it has no room for', () => {
    const hand = hot(['a1', 'a2'], ['b1']);
    fill(hand);
    fill(hand);
    empty(hand, 'lane.left');
    expect(hand.kitchen.lanes['lane.left']).toBeUndefined();
    empty(hand, 'lane.right');
    expect(hand.stage('lane.right')).toBe('recover');
  });

  it('takes a light loaf before a large one does, which a heavy one may want', () => {
    expect(fill(hot([], ['b1']))).toBe('lane.left');
  });

  it('takes what there is once no larger one is left', () => {
    const hand = hot(['a1'], []);
    hand.do({ kind: 'press', who: 'oven', act: 'potOut', item: 'lane.right' });
    expect(oven(hand)).toBe('poke');
    expect(fill(hand)).toBe('lane.left');
  });

  it('is refused to no hand that puts a loaf in all the same', () => {
    const hand = hot(['a1'], []);
    walkTo(hand, 'oven', 'load');
    expect(hand.press('oven', 'loaded', { loaves: ['a1'], lane: 'lane.left' })).toBe(true);
  });

  it('does not push aside the loaf that was just looked at when a larger one is hot', () => {
    const hand = hot(['a1', 'a2'], ['b1', 'b2']);
    fill(hand);
    expect(first(hand)).toBe('b1');
    empty(hand, 'lane.right');
    hand.press('lane.right', 'ovenHot');
    expect([oven(hand), first(hand)]).toEqual(['poke', 'b1']);
    expect(fill(hand)).toBe('lane.left');
    expect(first(hand)).toBe('a2');
  });

  it('leaves every loaf of a day its turn, and the log replays', () => {
    const hand = hot(['a1', 'a2', 'a3'], ['b1', 'b2']);
    bakeOn(hand);
    const loads = hand.records.flatMap(({ fact }) =>
      fact.kind === 'press' && fact.act === 'loaded' ? [`${fact.loaves} ${fact.lane}`] : [],
    );
    expect(loads).toHaveLength(5);
    expect(loads.filter((load) => load.startsWith('a'))).toEqual([
      'a1 lane.right',
      'a2 lane.right',
      'a3 lane.right',
    ]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is any pot where nobody said how large they are', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1', 'a2']);
    hand.press('oven', 'ovenOn', { lanes: LANES });
    walkTo(hand, 'oven', 'poke');
    expect([fill(hand), fill(hand)]).toEqual(LANES);
  });
});
