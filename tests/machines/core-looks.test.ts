import { describe, expect, it } from 'vitest';
import { coresTaught } from '../../machines/kitchen/core-looks.ts';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';
import { RECIPE, TIN } from './support/recipe.ts';

const POT = 'lane.left';
const PLAIN: Recipe = { ...RECIPE, formula: { ...RECIPE.formula, fillings: [] } };

const kitchen = (): Hand => new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });

/** One more bake, one loaf, in the left pot until it bakes open. */
const toOpen = (hand: Hand, id = 'a', recipe = PLAIN): Hand => {
  hand.start(id, 'oven.queued', [`${id}1`], recipe);
  if (hand.stage('oven') === 'turnOn') hand.press('oven', 'ovenOn', { lanes: [POT] });
  walkTo(hand, 'oven', 'load', id);
  hand.press('oven', 'loaded', { loaves: [`${id}1`], lane: POT });
  hand.turnTo(hand.deadline(POT)!);
  hand.press(POT, 'lidOff');
  expect(hand.stage(POT)).toBe('open');
  return hand;
};
const toJudge = (hand: Hand, id = 'a', recipe = PLAIN): Hand => {
  toOpen(hand, id, recipe).turnTo(hand.deadline(POT)!);
  expect(hand.stage(POT)).toBe('judge');
  return hand;
};
/** Out of the oven, and over; the oven stays on or goes off as the usual way has it. */
const done = (hand: Hand, id: string): void => {
  hand.press(POT, 'crustReady');
  hand.press(POT, 'unloaded');
  hand.press('oven', 'ovenOff');
  hand.press(id, 'ended');
  hand.turn(7 * 24 * 60);
};
const probe = (hand: Hand, celsius: number, id = 'a', odd = false): boolean =>
  hand.measure(id, { what: 'coreTemperature', celsius, ...(odd ? { odd: true } : {}) });
const cored = (hand: Hand) => hand.records.at(-1)!.fact.results?.find((one) => one.cored)?.cored;
const left = (hand: Hand): number => (hand.deadline(POT)! - hand.now) / MINUTE;

describe('a core measured at its look', () => {
  it('is pinned with its loaf, its minutes in the oven and those it was given', () => {
    const hand = toJudge(kitchen());
    probe(hand, 88);
    expect(cored(hand)).toEqual({
      start: 4,
      grams: 900,
      minutes: 38,
      height: 0,
      vessel: 'pot',
      filled: false,
      more: 7,
    });
  });

  it('says when to look again, and not after five minutes', () => {
    const hand = toJudge(kitchen());
    probe(hand, 88);
    hand.press(POT, 'crustNotYet');
    expect(left(hand)).toBe(7);
    hand.turn(7);
    expect(hand.stage(POT)).toBe('judge');
    probe(hand, 92);
    hand.press(POT, 'crustNotYet');
    // 45 of at most 47.8 minutes: the oven is not what it was, and the usual five are left.
    expect(left(hand)).toBe(5);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('leaves five minutes where it was there, where none was read, and on the bare rack', () => {
    const ways: readonly (readonly [number | null, string])[] = [
      [96, 'crustNotYet'],
      [null, 'crustNotYet'],
      [88, 'crustOnRack'],
    ];
    for (const [celsius, act] of ways) {
      const hand = toJudge(kitchen());
      if (celsius !== null) probe(hand, celsius);
      hand.press(POT, act);
      expect(left(hand), act).toBe(5);
    }
  });

  it('leaves five minutes to a base that is dark, before or after it', () => {
    const before = toJudge(kitchen());
    before.answer(POT, { base: 'dark' });
    probe(before, 88);
    before.press(POT, 'crustNotYet');
    expect(left(before)).toBe(5);
    const after = toJudge(kitchen());
    probe(after, 88);
    after.answer(POT, { base: 'dark' });
    after.press(POT, 'crustNotYet');
    expect(left(after)).toBe(5);
  });

  it('foretells nothing of a filled loaf by one low spot, which may be a pocket', () => {
    const hand = toJudge(kitchen(), 'a', RECIPE);
    probe(hand, 84);
    expect(cored(hand)?.more).toBeNull();
    probe(hand, 86);
    expect(cored(hand)?.more).toBe(9);
  });

  it('goes by what the spots of a filled loaf say together: the odd cool one is left out', () => {
    const hand = toJudge(kitchen(), 'a', RECIPE);
    probe(hand, 84);
    probe(hand, 95);
    // Two that are far apart are as good as low, and a third is asked for.
    expect(cored(hand)?.more).toBe(9);
    probe(hand, 96);
    expect(cored(hand)?.more).toBeNull();
    hand.press(POT, 'crustNotYet');
    expect(left(hand)).toBe(5);
    expect(coresTaught(hand.kitchen, null).map(({ core }) => core)).toEqual([95]);
  });

  it('is asked for as low as water boils, by the kitchen’s height', () => {
    const high = new Hand({ wait: waitFor, height: 1500, now: Date.UTC(2031, 4, 3, 6) });
    toJudge(high);
    probe(high, 88);
    expect(cored(high)).toMatchObject({ height: 1500, more: null });
    high.takeBack();
    probe(high, 84);
    expect(cored(high)?.more).toBeGreaterThanOrEqual(3);
  });

  it('is mended by a correction, and gone with a take-back', () => {
    const hand = toJudge(kitchen());
    probe(hand, 88);
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'coreTemperature', celsius: 92 } });
    expect(cored(hand)?.more).toBe(3);
    hand.press(POT, 'crustNotYet');
    expect(left(hand)).toBe(3);
    hand.takeBack();
    hand.takeBack();
    hand.press(POT, 'crustNotYet');
    expect(left(hand)).toBe(5);
    const again = hand.replayed();
    expect(again.trouble).toBeNull();
    expect(again.kitchen.lanes[POT]!.context.marks).toEqual(hand.kitchen.lanes[POT]!.context.marks);
  });

  it('keeps its minutes on replay, whatever the models would say now', () => {
    const hand = toJudge(kitchen());
    probe(hand, 88);
    const runs = hand.modelRuns;
    hand.press(POT, 'crustNotYet');
    expect(hand.modelRuns).toBe(runs + 1);
    const other = hand.replayed().kitchen;
    expect(hand.fold.deadlineOf(other.lanes[POT]!)).toBe(hand.deadline(POT));
    expect(hand.modelRuns).toBe(runs + 1);
  });
});

describe('a core measured while it bakes open', () => {
  it('moves the look to when it will be there, and back once it is mended', () => {
    const hand = toOpen(kitchen()).turn(12);
    expect(left(hand)).toBe(8);
    probe(hand, 91);
    const target = hand.records.at(-1)!.fact.id;
    expect(cored(hand)).toMatchObject({ minutes: 30, more: 3 });
    expect(left(hand)).toBe(3);
    hand.do({ kind: 'correct', target, reading: { what: 'coreTemperature', celsius: 94 } });
    expect(left(hand)).toBe(8);
    hand.takeBack();
    expect(left(hand)).toBe(8);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('never decides: one that is there long before its time changes nothing', () => {
    const hand = toOpen(kitchen()).turn(5);
    probe(hand, 99);
    expect(cored(hand)?.more).toBeNull();
    expect(left(hand)).toBe(15);
  });

  it('is of no loaf where several bake open', () => {
    const hand = kitchen();
    const lanes = [POT, 'lane.right'];
    hand.start('a', 'oven.queued', ['a1', 'a2'], PLAIN);
    hand.press('oven', 'ovenOn', { lanes });
    for (const [i, lane] of lanes.entries()) {
      walkTo(hand, 'oven', 'load');
      hand.press('oven', 'loaded', { loaves: [`a${i + 1}`], lane });
    }
    for (const lane of lanes) {
      hand.turnTo(Math.max(hand.now, hand.deadline(lane) ?? 0));
      hand.press(lane, 'lidOff');
    }
    expect(lanes.map((lane) => hand.stage(lane))).toEqual(['open', 'open']);
    probe(hand, 80);
    expect(cored(hand)).toBeUndefined();
  });

  it('knows a tin, which colours from the first minute on', () => {
    const hand = kitchen();
    hand.start('a', 'oven.queued', ['a1'], TIN);
    walkTo(hand, 'oven', 'open');
    hand.turn(30);
    probe(hand, 80);
    probe(hand, 82);
    expect(cored(hand)).toMatchObject({ minutes: 30, vessel: 'tin', start: 24 });
    expect(cored(hand)!.more).toBe(10);
  });
});

describe('what cores taught this kitchen', () => {
  const bake = (hand: Hand, id: string, celsius: number): void => {
    toJudge(hand, id);
    probe(hand, celsius, id);
    done(hand, id);
  };

  it('is pinned by the next start, and makes its forecast', () => {
    const hand = kitchen();
    for (const id of ['a', 'b', 'c', 'd']) bake(hand, id, 80);
    hand.start('e', 'oven.queued', ['e1'], PLAIN);
    const pinned = hand.records.at(-1)!.fact.results![0]!.cores!;
    expect(pinned).toHaveLength(4);
    expect(pinned[0]).toEqual({
      start: 4,
      grams: 900,
      minutes: 38,
      core: 80,
      boils: expect.closeTo(100, 1),
      vessel: 'pot',
    });
    const slow = toJudge(hand, 'f').turn(0);
    probe(slow, 90, 'f');
    const fresh = toJudge(kitchen(), 'f');
    probe(fresh, 90, 'f');
    expect(cored(slow)!.more).toBeGreaterThan(cored(fresh)!.more!);
  });

  it('is one core a look, the last of its corrections, and no odd one', () => {
    const hand = toJudge(kitchen());
    probe(hand, 91);
    probe(hand, 89);
    const target = hand.records.at(-1)!.fact.id;
    done(hand, 'a');
    expect(coresTaught(hand.kitchen, null).map(({ core }) => core)).toEqual([89]);
    toJudge(hand, 'b');
    probe(hand, 101.5, 'b', true);
    expect(coresTaught(hand.kitchen, null)).toHaveLength(1);
    expect(hand.kitchen.standing.some(({ id }) => id === target)).toBe(true);
  });

  it('outlasts a jump, and a reload', () => {
    const hand = kitchen();
    bake(hand, 'a', 85);
    hand.start('b', 'mix.weigh');
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    expect(coresTaught(hand.kitchen, null)).toHaveLength(1);
    hand.start('c', 'mix.weigh');
    expect(hand.records.at(-1)!.fact.results![0]!.cores).toHaveLength(1);
    expect(coresTaught(hand.replayed().kitchen, null)).toEqual(coresTaught(hand.kitchen, null));
  });

  it('is nothing of what was taken back', () => {
    const hand = toJudge(kitchen());
    probe(hand, 85);
    hand.takeBack();
    expect(coresTaught(hand.kitchen, null)).toEqual([]);
  });
});
