import { LISTS } from '../../../src/core/records/lists.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { Hand } from '../support/hand.ts';
import { stepOn, walkTo } from '../support/onward.ts';

/** A Saturday morning in May, 6 o'clock, in the invented lane. */
const SIX = Date.UTC(2031, 4, 3, 6);

/** One thing done, which must be taken: a golden log has no holes. */
const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden walk is refused.');
};

const signs = (hand: Hand, who: string, items: readonly string[]): void => {
  for (const item of items) must(hand.answer(who, { [item]: 'seen' }));
};

const toTheDough = (hand: Hand): void => {
  must(hand.start('bake-1', 'read.plan', ['bake-1.1', 'bake-1.2']));
  walkTo(hand, 'bake-1', 'read.list', 'bake-1');
  must(hand.answer('bake-1', { pot: 'clayOrGlass' }));
  must(hand.takeBack());
  walkTo(hand, 'bake-1', 'levain.look', 'bake-1');
  must(hand.snooze('bake-1'));
  hand.turn(2);
  must(hand.heard('bake-1'));
  signs(hand, 'bake-1', LISTS.levainSigns);
  must(hand.press('bake-1', 'levainNotYet'));
  hand.turn(20);
  must(hand.press('bake-1', 'levainSeen'));
  walkTo(hand, 'bake-1', 'mix.salt', 'bake-1');
  must(hand.heard('bake-1'));
  walkTo(hand, 'bake-1', 'mix.temperature', 'bake-1');
};

const toTheBaskets = (hand: Hand): void => {
  must(hand.dough('bake-1', 29));
  const reading = hand.records.at(-1)!.fact.id;
  hand.turn(4);
  must(
    hand.do({
      kind: 'correct',
      target: reading,
      reading: { what: 'doughTemperature', celsius: 25 },
    }),
  );
  walkTo(hand, 'bake-1', 'bulk.scatter', 'bake-1');
  must(hand.takeBack());
  must(hand.takeBack());
  walkTo(hand, 'bake-1', 'bulk.proving', 'bake-1');
  hand.turn(30);
  must(hand.dough('bake-1', 26, 'probe'));
  walkTo(hand, 'bake-1', 'bulk.look', 'bake-1');
  must(hand.heard('bake-1'));
  signs(hand, 'bake-1', LISTS.bulkSigns);
  walkTo(hand, 'bake-1', 'shape.divide', 'bake-1');
  must(hand.measure('bake-1', { what: 'firstPiece', grams: 911 }));
  walkTo(hand, 'bake-1', 'proof.toFridge', 'bake-1');
  must(hand.snooze('bake-1'));
  hand.turn(2);
  must(hand.snooze('bake-1', 1));
  walkTo(hand, 'bake-1', 'proof.look', 'bake-1');
  signs(hand, 'bake-1', LISTS.loafSigns);
};

/** Two loads through one pot, with a second bake that queues behind and is given up. */
const throughTheOven = (hand: Hand): void => {
  must(hand.press('bake-1', 'loafReady'));
  must(hand.takeBack());
  must(hand.press('bake-1', 'loafReady'));
  must(hand.start('bake-2', 'oven.queued', ['bake-2.1']));
  walkTo(hand, 'oven', 'poke', 'bake-1');
  must(hand.heard('oven'));
  signs(hand, 'oven', LISTS.pokeSigns);
  must(hand.press('oven', 'pokeNotYet'));
  walkTo(hand, 'oven', 'lift', 'bake-1');
  must(hand.heard('oven'));
  hand.turn(1);
  must(hand.press('oven', 'lidOff'));
  hand.turn(1);
  must(hand.takeBack());
  must(hand.heard('oven'));
  must(hand.press('oven', 'lidOff', { was: hand.now - MINUTE }));
  walkTo(hand, 'oven', 'judge', 'bake-1');
  must(hand.heard('oven'));
  signs(hand, 'oven', LISTS.crustSigns);
  must(hand.press('oven', 'crustNotYet'));
  walkTo(hand, 'oven', 'recover', 'bake-1');
  must(hand.press('bake-2', 'ended'));
  // Somebody sets the wall clock back in the middle of it.
  hand.wallBack(45);
  walkTo(hand, 'oven', 'lidded', 'bake-1');
  hand.turn(17);
  must(hand.press('oven', 'lidOff'));
  walkTo(hand, 'oven', 'turnOff', 'bake-1');
  must(stepOn(hand, 'oven'));
};

/**
 * A whole filled, retarded bake with everything in it that a log can hold but a jump: presses taken
 * back across both machines, calls silenced and put off, a reading corrected, a probe, a lid
 * reported late, a second bake given up, and a wall clock set back.
 */
export const goldenWalk = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SIX });
  toTheDough(hand);
  toTheBaskets(hand);
  throughTheOven(hand);
  walkTo(hand, 'bake-1', 'cool.handOver', 'bake-1');
  must(hand.heard('bake-1'));
  must(hand.press('bake-1', 'handedOver'));
  must(hand.press('bake-1', 'noted', { text: 'A little longer with the lid off.' }));
  return hand.records;
};
