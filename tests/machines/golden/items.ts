import { waitFor } from '../../../src/core/day/waits.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { Hand } from '../support/hand.ts';
import { bakeOn } from '../support/lanes-onward.ts';
import { walkTo } from '../support/onward.ts';
import { SCOOP, SEEDED, TIN } from '../support/recipe.ts';

/** A Friday in July, 7 o'clock, in the invented lane. */
const SEVEN = Date.UTC(2031, 6, 4, 7);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden fillings is refused.');
};
const mustNot = (taken: boolean): void => must(!taken);

const tick = (hand: Hand, bake: string, ...items: readonly string[]): void => {
  for (const item of items)
    must(hand.press(bake, 'answer', { item: `filling:${item}`, value: 'in' }));
};
const turn = (hand: Hand, act: 'loafFirst' | 'loafLater', item: string): boolean =>
  hand.do({ kind: 'press', who: 'oven', act, item });

/** Two seeds of one name and a soaker on the sheet; a tick taken back, and the last one. */
const onTheSheet = (hand: Hand): void => {
  must(hand.start('seed', 'mix.first', ['seed.1', 'seed.2', 'seed.3'], SEEDED));
  walkTo(hand, 'seed', 'bulk.scatter', 'seed');
  mustNot(hand.press('seed', 'scattered'));
  tick(hand, 'seed', 'sesame');
  must(hand.takeBack());
  tick(hand, 'seed', 'pumpkin', 'sesame', 'oats');
  must(hand.takeBack());
  mustNot(hand.press('seed', 'rolled'));
  tick(hand, 'seed', 'oats');
  walkTo(hand, 'seed', 'oven.queued', 'seed');
};

/** The loaf that was looked at goes in next; before its look and behind it turns may change. */
const atTheDoor = (hand: Hand): void => {
  must(hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] }));
  walkTo(hand, 'oven', 'poke', 'seed');
  must(turn(hand, 'loafFirst', 'seed.2'));
  must(hand.answer('oven', { dent: 'slowly' }));
  mustNot(turn(hand, 'loafLater', 'seed.2'));
  walkTo(hand, 'oven', 'load', 'seed');
  mustNot(turn(hand, 'loafLater', 'seed.2'));
  must(turn(hand, 'loafLater', 'seed.1'));
  must(hand.press('oven', 'loaded', { loaves: ['seed.2'], lane: 'lane.left' }));
  bakeOn(hand);
};

/** What no sheet took in: a rye spooned with it, a tin's loaves shaped with it. */
const intoTheDough = (hand: Hand): void => {
  must(hand.start('rye', 'shape.scoop', ['rye.1'], SCOOP));
  mustNot(hand.press('rye', 'scooped'));
  tick(hand, 'rye', 'hazelnut', 'cherry');
  must(hand.takeBack());
  mustNot(hand.press('rye', 'scooped'));
  tick(hand, 'rye', 'cherry');
  must(hand.press('rye', 'scooped'));
  const tin = { ...TIN, process: { ...TIN.process, touches: [] } };
  must(hand.start('tin', 'shape.divide', ['tin.1', 'tin.2'], tin));
  walkTo(hand, 'tin', 'shape.finalShape', 'tin');
  must(hand.heard('tin'));
  tick(hand, 'tin', 'cherry');
  mustNot(hand.press('tin', 'shaped'));
  tick(hand, 'tin', 'hazelnut');
  must(hand.press('tin', 'shaped'));
  must(hand.takeBack());
  must(hand.press('tin', 'shaped'));
  bakeOn(hand);
};

/**
 * Fillings ticked one by one, by the real models: on a sheet, into a rye and into a tin's loaves, with ticks
 * taken back; and loaves whose turn is changed where it may be.
 */
export const goldenItems = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SEVEN, wait: waitFor });
  onTheSheet(hand);
  atTheDoor(hand);
  intoTheDough(hand);
  return hand.records;
};
