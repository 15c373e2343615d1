import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import { Hand } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';
import { RECIPE, SCOOP, SEEDED, TIN } from './support/recipe.ts';

const standing = (stage: string, recipe: Recipe, from: string): Hand => {
  const hand = new Hand();
  expect(hand.start('a', from, ['a1', 'a2'], recipe)).toBe(true);
  return walkTo(hand, 'a', stage);
};
const onSheet = (recipe: Recipe = RECIPE): Hand => standing('bulk.scatter', recipe, 'mix.first');
const tick = (hand: Hand, item: string): boolean =>
  hand.press('a', 'answer', { item: `filling:${item}`, value: '130' });
const ticked = (hand: Hand): string[] => Object.keys(hand.kitchen.bakes['a']!.context.answers);

/** The kitchen as a page that is loaded anew has it. */
const reloaded = (hand: Hand): void => {
  const { kitchen, trouble } = hand.replayed();
  expect(trouble).toBeNull();
  hand.kitchen = kitchen;
};

const NO_SHEET = { ...TIN, process: { ...TIN.process, touches: [] } };
const COLD_SCOOP = { ...SCOOP, process: { ...SCOOP.process, counter: 20, retard: 720, warm: 0 } };
const none = (recipe: Recipe): Recipe => ({ ...recipe, lines: { ...recipe.lines, filling: [] } });
const atOnce = (recipe: Recipe): Recipe => ({ ...recipe, fillingAtOnce: true });

describe('the fillings of a sheet', () => {
  it('are ticked one by one, and the sheet is rolled once all of them are', () => {
    const hand = onSheet();
    expect([hand.press('a', 'scattered'), hand.press('a', 'rolled')]).toEqual([false, false]);
    expect(tick(hand, 'cherry')).toBe(true);
    expect([hand.stage('a'), ticked(hand)]).toEqual(['bulk.scatter', ['filling:cherry']]);
    expect([hand.press('a', 'scattered'), hand.press('a', 'rolled')]).toEqual([false, false]);
    expect(tick(hand, 'hazelnut')).toBe(true);
    expect(hand.stage('a')).toBe('bulk.roll');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('go on in any order, and take no other item, nor one without its grams', () => {
    const hand = onSheet();
    expect(tick(hand, 'walnut')).toBe(false);
    expect(hand.press('a', 'answer', { item: 'filling:cherry' })).toBe(false);
    expect(tick(hand, 'hazelnut')).toBe(true);
    expect(tick(hand, 'hazelnut')).toBe(true);
    expect(hand.stage('a')).toBe('bulk.scatter');
    expect(tick(hand, 'cherry')).toBe(true);
    expect(hand.stage('a')).toBe('bulk.roll');
  });

  it('are taken back one tick at a time, the last one too', () => {
    const hand = onSheet();
    tick(hand, 'cherry');
    tick(hand, 'hazelnut');
    expect(hand.takeBack()).toBe(true);
    expect([hand.stage('a'), ticked(hand)]).toEqual(['bulk.scatter', ['filling:cherry']]);
    expect(hand.takeBack()).toBe(true);
    expect([hand.stage('a'), ticked(hand)]).toEqual(['bulk.scatter', []]);
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('bulk.spread');
  });

  it('stay ticked over a reload', () => {
    const hand = onSheet();
    tick(hand, 'cherry');
    reloaded(hand);
    expect(ticked(hand)).toEqual(['filling:cherry']);
    tick(hand, 'hazelnut');
    expect(hand.stage('a')).toBe('bulk.roll');
  });

  it('of one name and one group are two, and what a soaker soaked in is none', () => {
    const hand = onSheet(SEEDED);
    const { filling } = SEEDED.lines;
    expect(new Set(filling.map(({ name }) => name)).size).toBeLessThan(filling.length);
    expect(hand.press('a', 'answer', { item: 'soak:oats', value: '90' })).toBe(false);
    for (const seed of ['pumpkin', 'sesame']) {
      expect(tick(hand, seed)).toBe(true);
      expect(hand.stage('a')).toBe('bulk.scatter');
    }
    expect(ticked(hand)).toHaveLength(2);
    tick(hand, 'oats');
    expect(hand.stage('a')).toBe('bulk.roll');
  });

  it('are asked for on each sheet alone: the loaves are shaped as ever', () => {
    const hand = standing('shape.finalShape', RECIPE, 'shape.divide');
    expect(tick(hand, 'cherry')).toBe(false);
    expect(hand.press('a', 'shaped')).toBe(true);
  });

  it('that has none is left by its one press', () => {
    const hand = onSheet(none(RECIPE));
    expect(hand.press('a', 'answer', { item: 'filling:cherry', value: '130' })).toBe(false);
    expect(hand.press('a', 'scattered')).toBe(true);
    expect(hand.stage('a')).toBe('bulk.roll');
  });
});

describe('fillings that no sheet takes in', () => {
  it.each([
    ['shape.finalShape', NO_SHEET, 'shape.divide', 'shaped', 'shape.basket'],
    ['shape.scoop', SCOOP, 'shape.scoop', 'scooped', 'proof.warm'],
    ['shape.scoop', COLD_SCOOP, 'shape.scoop', 'scooped', 'proof.counter'],
  ])('are in before %s is done', (stage, recipe, from, act, next) => {
    const hand = standing(stage, recipe, from);
    expect(hand.press('a', act)).toBe(false);
    expect(tick(hand, 'cherry')).toBe(true);
    expect(hand.press('a', act)).toBe(false);
    reloaded(hand);
    expect(ticked(hand)).toEqual(['filling:cherry']);
    expect(tick(hand, 'hazelnut')).toBe(true);
    expect(hand.stage('a')).toBe(stage);
    expect(hand.takeBack()).toBe(true);
    expect(hand.press('a', act)).toBe(false);
    tick(hand, 'hazelnut');
    expect(hand.press('a', act)).toBe(true);
    expect(hand.stage('a')).toBe(next);
    walkToEnd(hand);
    expect(hand.replayed().trouble).toBeNull();
  });

  it.each([
    ['shape.finalShape', NO_SHEET, 'shape.divide', 'shaped'],
    ['shape.scoop', SCOOP, 'shape.scoop', 'scooped'],
  ])('leave a loaf without any as it was at %s', (stage, recipe, from, act) => {
    const hand = standing(stage, none(recipe), from);
    expect(tick(hand, 'cherry')).toBe(false);
    expect(hand.press('a', act)).toBe(true);
  });
});

describe('a bake of before they were ticked', () => {
  const WAYS = [
    ['bulk.scatter', RECIPE, 'mix.first', 'scattered'],
    ['shape.finalShape', NO_SHEET, 'shape.divide', 'shaped'],
    ['shape.scoop', SCOOP, 'shape.scoop', 'scooped'],
  ] as const;

  it.each(WAYS)('has all of it in with one press at %s', (stage, recipe, from, act) => {
    const hand = standing(stage, atOnce(recipe), from);
    expect(tick(hand, 'cherry')).toBe(false);
    expect(hand.press('a', act)).toBe(true);
    expect(hand.stage('a')).not.toBe(stage);
  });

  it.each(WAYS)('is known by its version, and goes on so, from %s', (stage, recipe, from, act) => {
    const before = standing(stage, atOnce(recipe), from);
    const rows = before.records.map((record) => ({
      ...record,
      machineVersion: 10,
      fact: record.fact.kind === 'start' ? { ...record.fact, recipe } : record.fact,
    }));
    const records = rows.map((row) => readRecord(row, MACHINE_VERSION).record!);
    const hand = new Hand({ now: before.now });
    const { kitchen, trouble } = replay(records, hand.machines);
    expect(trouble).toBeNull();
    hand.kitchen = kitchen;
    hand.records = [...records];
    expect(tick(hand, 'cherry')).toBe(false);
    expect(hand.press('a', act)).toBe(true);
    expect(hand.replayed().trouble).toBeNull();
  });
});
