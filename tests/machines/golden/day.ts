import type { LogRecord } from '../../../src/core/records/record.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import { Hand } from '../support/hand.ts';
import { stepOn, walkTo, walkToEnd } from '../support/onward.ts';
import { SCOOP, STONE, TIN } from '../support/recipe.ts';

/** A Sunday morning in May, 6 o'clock, in the invented lane. */
const SIX = Date.UTC(2031, 4, 4, 6);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden day is refused.');
};

/** The oven goes on for loaves that come soon, is hot before them, and is taken back once. */
const warmTin = (hand: Hand): void => {
  must(hand.start('tin', 'read.plan', ['tin.1', 'tin.2'], TIN));
  walkTo(hand, 'tin', 'bulk.proving', 'tin');
  must(hand.measure('tin', { what: 'rise', percent: 50, of: 'dough' }));
  walkTo(hand, 'tin', 'proof.soon', 'tin');
  must(hand.press('oven', 'ovenOn'));
  must(hand.takeBack());
  must(hand.heard('oven'));
  must(hand.press('oven', 'ovenOn'));
  walkTo(hand, 'tin', 'proof.poke', 'tin');
  must(hand.answer('tin', { dent: 'springs' }));
  must(hand.press('tin', 'loafNotYet'));
  walkToEnd(hand, 'tin');
};

/** Two bakes through one oven, of another kind each; fewer loaves than were planned. */
const scoopAndStone = (hand: Hand): void => {
  must(hand.start('rye', 'shape.scoop', ['rye.1'], SCOOP));
  must(hand.start('stone', 'oven.queued', ['stone.1', 'stone.2'], STONE));
  must(hand.press('stone', 'fewer', { loaves: ['stone.2'] }));
  walkTo(hand, 'oven', 'vent', 'stone');
  must(hand.press('oven', 'steamOut'));
  must(hand.takeBack());
  must(hand.press('oven', 'steamOut'));
  walkToEnd(hand, 'rye');
  while (hand.stage('stone') !== null) must(stepOn(hand, 'stone'));
};

/**
 * A day without a fridge, judged by the real models: loaves that rise warm, in tins; a dough of much
 * rye spooned in; a load on a stone between them.
 */
export const goldenDay = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SIX, wait: waitFor });
  warmTin(hand);
  scoopAndStone(hand);
  return hand.records;
};
