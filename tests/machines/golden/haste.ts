import { starterWait } from '../../../src/core/day/starter-wait.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { shiftPosition } from '../../../src/core/records/shift-position.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { Hand } from '../support/hand.ts';
import { walkTo, walkToEnd } from '../support/onward.ts';
import { RECIPE, TIN } from '../support/recipe.ts';

/** A short night in the fridge, so that the baskets stand on the counter first. */
const SHORT = { ...RECIPE, process: { ...RECIPE.process, retard: 420 } };

/** A Friday in December, 7 o'clock, in the invented lane. */
const SEVEN = Date.UTC(2031, 11, 5, 7);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden haste is refused.');
};

/** Silenced first, as a finger silences, then put off, taken back, and put off for good. */
const putOff = (hand: Hand, who: string): void => {
  must(hand.heard(who));
  must(hand.snooze(who));
  must(hand.takeBack());
  must(hand.heard(who));
  must(hand.snooze(who));
  hand.turn(2);
  must(hand.ringing?.startsWith(who) ?? false);
  must(hand.heard(who));
};

/** Fed with nothing in the night, seen to rise by the real model, and another starter before it. */
const theStarter = (hand: Hand): void => {
  must(hand.tend({ did: 'fed', flour: 5, celsius: 21 }));
  must(hand.tend({ did: 'renewed' }));
  const midnight = SEVEN - 7 * HOUR;
  const night = { midnight, from: 22 * 60, to: 7 * 60 };
  must(hand.tend({ did: 'fed', flour: 1, celsius: 22, night }));
  hand.turn(200);
  must(hand.tend({ did: 'rose', percent: 75 }));
};

/** Hands that beat the model at every wait of a cold loaf that they may go on out of. */
const beforeTheModel = (hand: Hand): void => {
  must(hand.start('haste', 'read.plan', ['haste.1', 'haste.2'], SHORT));
  walkTo(hand, 'haste', 'levain.ripening', 'haste');
  hand.turn(90);
  must(hand.press('haste', 'levainRipe'));
  must(hand.takeBack());
  hand.turn(30);
  must(hand.press('haste', 'levainRipe'));
  must(hand.press('haste', 'starterKept', { grams: 40 }));
  walkTo(hand, 'haste', 'mix.rest', 'haste');
  must(hand.measure('haste', { what: 'wantedDough', celsius: 25 }));
  must(hand.measure('haste', { what: 'water', celsius: 12, of: 'tap' }));
  hand.turn(20);
  must(hand.press('haste', 'rested'));
  walkTo(hand, 'haste', 'mix.temperature', 'haste');
  must(hand.dough('haste', 22));
  hand.turn(12);
  must(hand.press('haste', 'touchNow'));
  walkTo(hand, 'haste', 'bulk.fold', 'haste');
  must(hand.press('haste', 'folded'));
  walkTo(hand, 'haste', 'bulk.proving', 'haste');
  must(hand.measure('haste', { what: 'edge', edge: 'domed', bubbles: 'some' }));
  must(hand.measure('haste', { what: 'rise', percent: 50, of: 'dough', atLeast: true }));
  hand.turn(15);
  must(hand.press('haste', 'bulkReady'));
  walkTo(hand, 'haste', 'shape.benchRest', 'haste');
  hand.turn(9);
  must(hand.press('haste', 'benchRested'));
  walkTo(hand, 'haste', 'proof.counter', 'haste');
  hand.turn(5);
  must(hand.press('haste', 'counterDone'));
};

/** A timer of one's own: put off twice, and no third time; stopped, and the stop taken back. */
const ownTimer = (hand: Hand): void => {
  const set = (timer: string, minutes: number, call: 'act' | 'hot') =>
    hand.do({ kind: 'timer', timer, name: 'kettle', until: hand.now + minutes * MINUTE, call });
  must(set('t1', 6, 'act'));
  must(set('t2', 9, 'hot'));
  hand.turn(6);
  putOff(hand, 'timer');
  must(hand.snooze('timer'));
  hand.turn(1);
  // The hot one calls while the other is put off.
  must(hand.ringing === 'timer:t2');
  must(hand.do({ kind: 'heard', call: hand.fold.wanted(hand.kitchen).ringing?.id ?? 'none' }));
  hand.turn(1);
  must(hand.heard('timer'));
  must(!hand.snooze('timer'));
  must(hand.do({ kind: 'timerOff', timer: 't1' }));
  must(hand.takeBack());
  must(hand.do({ kind: 'timerOff', timer: 't1' }));
  must(hand.do({ kind: 'timerOff', timer: 't2' }));
};

/** The wall clock was hours ahead and is set right: all that waits is moved on with it. */
const clockWrong = (hand: Hand): void => {
  hand.turn(190);
  const { position, fact } = hand.records.at(-1)!;
  must(hand.do({ kind: 'jump', position: shiftPosition(position, hand.now - fact.at) }));
  must(!hand.takeBack());
};

/** Warm tins beside it, whose oven was about to go off and is called for anew; then both bakes to their end. */
const throughTheOven = (hand: Hand): void => {
  must(hand.start('tin', 'shape.divide', ['tin.1'], TIN));
  walkTo(hand, 'tin', 'proof.warm', 'tin');
  must(hand.start('gone', 'oven.queued', ['gone.1']));
  walkTo(hand, 'oven', 'preheating', 'gone');
  must(hand.press('gone', 'ended'));
  must(hand.stage('oven') === 'turnOff');
  hand.turnTo(hand.deadline('tin')!);
  must(hand.ringing === 'oven:turnOn');
  putOff(hand, 'oven');
  must(hand.press('oven', 'ovenOn'));
  hand.turn(10);
  must(hand.press('oven', 'ovenHot'));
  must(hand.press('tin', 'loafReady'));
  must(hand.takeBack());
  must(hand.press('tin', 'loafReady'));
  walkToEnd(hand, 'tin');
  must(hand.press('haste', 'loafReady'));
  must(hand.press('haste', 'fewer', { loaves: ['haste.1'] }));
  walkTo(hand, 'oven', 'open', 'haste');
  hand.turn(6);
  must(hand.press('oven', 'colourSeen'));
  walkTo(hand, 'haste', 'cool.cooling', 'haste');
  hand.turn(40);
  must(hand.measure('haste', { what: 'weight', grams: 810, of: 'loaf' }));
  must(hand.press('haste', 'cooled'));
  walkToEnd(hand, 'haste');
};

/**
 * A day of hands ahead of the model, judged by the real ones: every wait that may be gone on out of early, calls
 * silenced and then put off, the putting off taken back, timers, a clock set right in the middle,
 * and an oven wanted again as it was to go off.
 */
export const goldenHaste = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SEVEN, wait: waitFor, starter: starterWait });
  theStarter(hand);
  beforeTheModel(hand);
  ownTimer(hand);
  walkTo(hand, 'haste', 'proof.toFridge', 'haste');
  must(hand.press('haste', 'inFridge'));
  clockWrong(hand);
  hand.turn(60);
  must(hand.measure('haste', { what: 'growth', grown: 'little', rim: 'below' }));
  throughTheOven(hand);
  return hand.records;
};
