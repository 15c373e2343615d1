import { waitFor } from '../../../src/core/day/waits.ts';
import { TRAY_LANE } from '../../../src/core/records/lane.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { Hand } from '../support/hand.ts';
import { bakeOn } from '../support/lanes-onward.ts';
import { walkTo } from '../support/onward.ts';

/** A Sunday in June, 7 o'clock, in the invented lane. */
const SEVEN = Date.UTC(2031, 5, 22, 7);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden flat bread is refused.');
};

/**
 * Four loaves, two pots, by the real models: the first has gone over and bakes flat in a tray while the
 * others go on in their pots; its way there and its load are taken back once each.
 */
export const goldenFlat = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SEVEN, wait: waitFor });
  must(hand.start('olive', 'oven.queued', ['olive.1', 'olive.2', 'olive.3', 'olive.4']));
  must(hand.press('oven', 'ovenOn', { lanes: ['lane.left', 'lane.right'] }));
  walkTo(hand, 'oven', 'poke', 'olive');
  must(hand.answer('oven', { dent: 'stays', grown: 'grown' }));
  must(hand.press('oven', 'pokeFlat'));
  must(hand.takeBack());
  must(hand.press('oven', 'pokeFlat'));
  walkTo(hand, 'oven', 'tray', 'olive');
  const flat = { loaves: ['olive.1'], lane: TRAY_LANE };
  must(hand.press('oven', 'loaded', flat));
  must(hand.takeBack());
  hand.turn(1);
  must(hand.press('oven', 'loaded', flat));
  walkTo(hand, 'oven', 'load', 'olive');
  must(hand.press('oven', 'loaded', { loaves: ['olive.2'], lane: 'lane.left' }));
  hand.turnTo(hand.deadline(TRAY_LANE)!);
  must(hand.heard(TRAY_LANE));
  must(hand.press(TRAY_LANE, 'crustNotYet'));
  bakeOn(hand);
  return hand.records;
};
