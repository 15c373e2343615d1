import { describe, expect, it } from 'vitest';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { TRAY } from '../../src/core/oven/tray.ts';
import { TRAY_LANE } from '../../src/core/records/lane.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { bakeOn } from './support/lanes-onward.ts';
import { walkTo } from './support/onward.ts';
import { RECIPE, STONE, TIN } from './support/recipe.ts';

const LANES = ['lane.left', 'lane.right'];

/** Loaves at a hot oven with two pots, the first at the door. */
const atDoor = (loaves: readonly string[], recipe = RECIPE): Hand => {
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'oven.queued', [...loaves], recipe);
  expect(hand.press('oven', 'ovenOn', { lanes: LANES })).toBe(true);
  return walkTo(hand, 'oven', 'poke');
};
const oven = (hand: Hand): string => hand.fold.stageOf(hand.kitchen.oven);
const tray = (hand: Hand): string | null =>
  hand.kitchen.lanes[TRAY_LANE] ? hand.fold.stageOf(hand.kitchen.lanes[TRAY_LANE]) : null;
const say = (hand: Hand, act: 'loafLater' | 'loafFirst', item: string): boolean =>
  hand.do({ kind: 'press', who: 'oven', act, item });
/** The first loaf flat, in its tray. */
const flatten = (hand: Hand): void => {
  expect(hand.press('oven', 'pokeFlat')).toBe(true);
  walkTo(hand, 'oven', 'tray');
  expect(hand.press('oven', 'loaded', { loaves: ['a1'], lane: TRAY_LANE })).toBe(true);
};
const fill = (hand: Hand, loaf: string, lane: string): void => {
  walkTo(hand, 'oven', 'load');
  expect(hand.press('oven', 'loaded', { loaves: [loaf], lane })).toBe(true);
};

describe('a loaf that is over at the oven’s door', () => {
  it('bakes flat in a tray while the others go on in every pot', () => {
    const hand = atDoor(['a1', 'a2', 'a3', 'a4']);
    flatten(hand);
    expect([oven(hand), tray(hand)]).toEqual(['poke', 'open']);
    fill(hand, 'a2', 'lane.left');
    fill(hand, 'a3', 'lane.right');
    expect(loavesIn(hand.kitchen)).toEqual(['a1', 'a2', 'a3']);
    bakeOn(hand);
    const loads = hand.records.flatMap(({ fact }) =>
      fact.kind === 'press' && fact.act === 'loaded' ? [[fact.loaves, fact.lane]] : [],
    );
    expect(loads.map(([loaves]) => loaves)).toEqual([['a1'], ['a2'], ['a3'], ['a4']]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is called hot after 20 minutes, whatever its recipe has under no lid', () => {
    const hand = atDoor(['a1', 'a2'], { ...RECIPE, process: { ...RECIPE.process, open: 29 } });
    flatten(hand);
    expect(hand.deadline(TRAY_LANE)! - hand.now).toBe(TRAY.least * MINUTE);
    hand.turnTo(hand.deadline(TRAY_LANE)!);
    expect(hand.ringing).toBe(`${TRAY_LANE}:judge`);
    expect(hand.press(TRAY_LANE, 'crustOnRack')).toBe(false);
    expect(hand.press(TRAY_LANE, 'crustNotYet')).toBe(true);
    expect(hand.deadline(TRAY_LANE)! - hand.now).toBe(5 * MINUTE);
    hand.turn(5);
    expect(hand.press(TRAY_LANE, 'crustReady')).toBe(true);
    expect(hand.press(TRAY_LANE, 'unloaded')).toBe(true);
    // A tray is not waited for: it needs no heat of its own.
    expect([tray(hand), hand.kitchen.oven.context.out]).toEqual([null, ['a1']]);
  });

  it('teaches nothing of how loaves heat through', () => {
    const hand = atDoor(['a1', 'a2']);
    flatten(hand);
    hand.turnTo(hand.deadline(TRAY_LANE)!);
    expect(hand.measure('a', { what: 'coreTemperature', celsius: 80 })).toBe(true);
    const results = hand.records.at(-1)!.fact.results ?? [];
    expect(results.filter(({ cored }) => cored)).toEqual([]);
    hand.press(TRAY_LANE, 'crustNotYet');
    expect(hand.deadline(TRAY_LANE)! - hand.now).toBe(5 * MINUTE);
  });

  it('waits for mitts, floor and child as the first load does, and is asked once', () => {
    const hand = atDoor(['a1', 'a2']);
    hand.press('oven', 'pokeFlat');
    expect(oven(hand)).toBe('before');
    walkTo(hand, 'oven', 'tray');
    hand.press('oven', 'loaded', { loaves: ['a1'], lane: TRAY_LANE });
    hand.press('oven', 'pokeReady');
    expect(oven(hand)).toBe('score');
  });

  it('is alone in the tray: the next one that is over has to take a pot', () => {
    const hand = atDoor(['a1', 'a2', 'a3']);
    flatten(hand);
    expect(hand.press('oven', 'pokeFlat')).toBe(false);
    expect(hand.press('oven', 'pokeOver')).toBe(true);
    expect(oven(hand)).toBe('score');
  });

  it('goes into no pot, and no other goes into its tray', () => {
    const hand = atDoor(['a1', 'a2', 'a3']);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    const into = (loaves: string[], lane?: string) =>
      hand.press('oven', 'loaded', { loaves, ...(lane ? { lane } : {}) });
    expect(into(['a1'], 'lane.left')).toBe(false);
    expect(into(['a2'], TRAY_LANE)).toBe(false);
    expect(into(['a1', 'a2'], TRAY_LANE)).toBe(false);
    expect(into(['a1'])).toBe(true);
    expect(tray(hand)).toBe('open');
  });

  it('is looked at anew where its turn is changed, and bakes in a pot then', () => {
    const hand = atDoor(['a1', 'a2', 'a3']);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    expect(say(hand, 'loafFirst', 'a3')).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting[0]]).toEqual(['tray', 'a1']);
    expect(say(hand, 'loafLater', 'a1')).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting]).toEqual(['poke', ['a3', 'a2', 'a1']]);
    bakeOn(hand);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('given up before it is in, leaves the others to be looked at', () => {
    const hand = atDoor(['a1', 'a2', 'a3']);
    hand.press('oven', 'pokeFlat');
    walkTo(hand, 'oven', 'tray');
    expect(hand.press('a', 'fewer', { loaves: ['a2', 'a3'] })).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.waiting]).toEqual(['poke', ['a2', 'a3']]);
  });

  it('stays the first to be looked at where its pot dropped out meanwhile', () => {
    const hand = atDoor(['a1', 'a2', 'a3']);
    fill(hand, 'a1', 'lane.left');
    hand.press('oven', 'pokeFlat');
    expect(oven(hand)).toBe('tray');
    hand.do({ kind: 'press', who: 'oven', act: 'potOut', item: 'lane.right' });
    expect(oven(hand)).toBe('baking');
    for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded', 'ovenHot']) {
      expect([act, hand.press('lane.left', act)]).toEqual([act, true]);
    }
    expect([oven(hand), hand.kitchen.oven.context.waiting]).toEqual(['poke', ['a2', 'a3']]);
    hand.press('oven', 'pokeOver');
    expect(oven(hand)).toBe('score');
    expect(hand.kitchen.oven.context.turns).toEqual({ a2: 'first' });
  });

  it('taken back out of the tray, and out of its new goal, is at the door again', () => {
    const hand = atDoor(['a1', 'a2']);
    flatten(hand);
    expect(hand.takeBack()).toBe(true);
    expect([oven(hand), tray(hand)]).toEqual(['tray', null]);
    const pressed = () =>
      hand.kitchen.standing.some((fact) => fact.kind === 'press' && fact.act === 'pokeFlat');
    while (pressed()) expect(hand.takeBack()).toBe(true);
    expect([oven(hand), hand.kitchen.oven.context.turns]).toEqual(['poke', undefined]);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('of a stone has the oven to itself, and the stone is loaded after it', () => {
    const hand = atDoor(['a1', 'a2'], STONE);
    flatten(hand);
    expect(oven(hand)).toBe('baking');
    hand.turnTo(hand.deadline(TRAY_LANE)!);
    for (const act of ['crustReady', 'unloaded']) hand.press(TRAY_LANE, act);
    expect(oven(hand)).toBe('poke');
    bakeOn(hand);
  });

  it('in a tin stays in its tin', () => {
    const hand = atDoor(['a1', 'a2'], TIN);
    expect(hand.press('oven', 'pokeFlat')).toBe(false);
    expect(hand.press('oven', 'pokeOver')).toBe(true);
  });
});
