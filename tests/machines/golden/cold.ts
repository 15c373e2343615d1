import { waitFor } from '../../../src/core/day/waits.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { Hand } from '../support/hand.ts';
import { walkTo, walkToEnd } from '../support/onward.ts';
import { RECIPE } from '../support/recipe.ts';

/** An evening in November, 6 o'clock, in the invented lane. */
const EVENING = Date.UTC(2031, 10, 7, 18);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden night is refused.');
};

/** The starter between bakes: named, kept, fed, looked at twice, and put away. */
const tendStarter = (hand: Hand): void => {
  must(hand.tend({ did: 'named', name: 'wheat' }));
  must(hand.tend({ did: 'kept', grams: 40 }));
  must(hand.tend({ did: 'fed', flour: 2, celsius: 23 }));
  hand.turn(150);
  must(hand.tend({ did: 'rose', percent: 50 }));
  hand.turn(90);
  must(hand.tend({ did: 'rose', percent: 100 }));
  must(hand.tend({ did: 'topped', top: 'domed' }));
  must(hand.tend({ did: 'put', where: 'fridge' }));
  must(hand.takeBack());
  must(hand.tend({ did: 'put', where: 'fridge' }));
};

/**
 * A night judged by the real models: the starter, a bulk asked for its rise, a timer of one's own, baskets
 * told how long to stand, a tight cold loaf that stands out, and a second dough that goes straight into
 * a warm fridge.
 */
export const goldenNight = (): readonly LogRecord[] => {
  const hand = new Hand({ now: EVENING, wait: waitFor });
  tendStarter(hand);
  must(hand.start('cold', 'mix.weigh', ['cold.1', 'cold.2']));
  walkTo(hand, 'cold', 'bulk.proving', 'cold');
  const ask = Object.entries(hand.kitchen.bakes['cold']!.context.marks).find(([mark]) =>
    mark.startsWith('lead.rise'),
  );
  if (!ask) throw new Error('The golden bulk asks for nothing.');
  hand.turnTo(ask[1]);
  must(hand.heard('cold'));
  must(hand.measure('cold', { what: 'rise', percent: 25, of: 'dough' }));
  must(hand.measure('cold', { what: 'rise', percent: 20, of: 'dough', in: 'jar' }));
  const until = hand.now + 12 * MINUTE;
  must(hand.do({ kind: 'timer', timer: 't1', name: 'kettle', until, call: 'act' }));
  hand.turn(13);
  must(hand.do({ kind: 'timerOff', timer: 't1' }));
  walkTo(hand, 'cold', 'proof.retard', 'cold');
  hand.turn(480);
  must(hand.press('cold', 'loafSeen'));
  must(hand.answer('cold', { grown: 'none', rim: 'below', dent: 'springs' }));
  must(hand.press('cold', 'standOut'));
  must(hand.takeBack());
  must(hand.press('cold', 'standOut'));
  must(hand.start('warm', 'shape.divide', ['warm.1'], {
    ...RECIPE,
    process: { ...RECIPE.process, fridge: 9, retard: 1080 },
  }));
  walkTo(hand, 'warm', 'proof.toFridge', 'warm');
  walkToEnd(hand, 'cold');
  walkToEnd(hand, 'warm');
  return hand.records;
};
