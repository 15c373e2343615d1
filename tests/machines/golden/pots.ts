import { waitFor } from '../../../src/core/day/waits.ts';
import { LISTS } from '../../../src/core/records/lists.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { Hand } from '../support/hand.ts';
import { bakeOn } from '../support/lanes-onward.ts';
import { walkTo } from '../support/onward.ts';
import { RECIPE } from '../support/recipe.ts';

/** A Saturday in June, 8 o'clock, in the invented lane. */
const EIGHT = Date.UTC(2031, 5, 21, 8);

const [LEFT, MIDDLE, RIGHT] = ['lane.left', 'lane.middle', 'lane.right'] as const;
const POTS = [LEFT, MIDDLE, RIGHT];
const loavesOf = (bake: string, n: number): string[] =>
  Array.from({ length: n }, (_, i) => `${bake}.${i + 1}`);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden pots is refused.');
};

/** Said of the oven itself, whatever its pots are at. */
const say = (hand: Hand, act: string, item: string): void =>
  must(hand.do({ kind: 'press', who: 'oven', act, item } as Parameters<Hand['do']>[0]));

const fill = (hand: Hand, lane: string): string => {
  walkTo(hand, 'oven', 'load', 'cherry');
  const loaf = hand.kitchen.oven.context.waiting[0]!;
  must(hand.press('oven', 'loaded', { loaves: [loaf], lane }));
  return loaf;
};

/** Two breads wait; the first loaf is sluggish, and the others go in around it. */
const toTheOven = (hand: Hand): void => {
  must(hand.start('cherry', 'oven.queued', loavesOf('cherry', 4)));
  must(hand.start('wheat', 'oven.queued', loavesOf('wheat', 3), { ...RECIPE, loaves: 3 }));
  must(hand.press('oven', 'ovenOn', { lanes: [LEFT, RIGHT] }));
  must(hand.takeBack());
  must(hand.press('oven', 'ovenOn', { lanes: POTS }));
  walkTo(hand, 'oven', 'poke', 'cherry');
  must(hand.heard('oven'));
  for (const item of LISTS.pokeSigns) must(hand.answer('oven', { [item]: 'springs' }));
  must(hand.press('oven', 'pokeNotYet'));
  say(hand, 'loafFirst', 'wheat.2');
  must(hand.takeBack());
  say(hand, 'loafFirst', 'cherry.3');
};

/** One after the other into the pots, and taken back across two of them. */
const fillAll = (hand: Hand): void => {
  fill(hand, LEFT);
  hand.turn(3);
  fill(hand, MIDDLE);
  must(hand.takeBack());
  fill(hand, RIGHT);
  hand.turn(2);
  fill(hand, MIDDLE);
};

const lidOff = (hand: Hand, lane: string, was?: number): void => {
  hand.turnTo(Math.max(hand.now, hand.deadline(lane) ?? hand.now));
  must(hand.heard(lane));
  must(hand.press(lane, 'lidOff', was === undefined ? {} : { was: hand.now - was * MINUTE }));
};

/** Lids in turn; the second taken back rings again while the first already colours. */
const lids = (hand: Hand): void => {
  lidOff(hand, LEFT);
  lidOff(hand, RIGHT);
  hand.turn(1);
  must(hand.takeBack());
  must(hand.ringing === `${RIGHT}:lift`);
  lidOff(hand, RIGHT, 1);
  lidOff(hand, MIDDLE);
};

const judge = (hand: Hand, lane: string): void => {
  hand.turnTo(Math.max(hand.now, hand.deadline(lane) ?? hand.now));
  for (const item of LISTS.crustSigns) must(hand.answer(lane, { [item]: 'golden' }));
};

/** One finishes on the bare rack, one pot drops out with its loaf in it, one press is taken back. */
const crusts = (hand: Hand): void => {
  judge(hand, LEFT);
  must(hand.press(LEFT, 'crustOnRack'));
  say(hand, 'potOut', RIGHT);
  judge(hand, RIGHT);
  must(hand.press(RIGHT, 'crustReady'));
  must(hand.press(RIGHT, 'unloaded'));
  must(hand.takeBack());
  must(hand.press(RIGHT, 'unloaded'));
  judge(hand, MIDDLE);
  must(hand.press(MIDDLE, 'crustNotYet'));
  judge(hand, LEFT);
  must(hand.press(LEFT, 'crustReady'));
  must(hand.press(LEFT, 'unloaded'));
  hand.turnTo(hand.deadline(LEFT)!);
  say(hand, 'loafLater', 'wheat.3');
};

/**
 * Seven loaves of two breads through three pots, by the real models: each pot with its own lid, a slow
 * loaf left for later, one on the bare rack, a pot that drops out, presses taken back across pots, and
 * the oven off at the end.
 */
export const goldenPots = (): readonly LogRecord[] => {
  const hand = new Hand({ now: EIGHT, wait: waitFor });
  toTheOven(hand);
  fillAll(hand);
  lids(hand);
  crusts(hand);
  bakeOn(hand);
  return hand.records;
};
