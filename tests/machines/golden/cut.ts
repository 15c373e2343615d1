import { waitFor } from '../../../src/core/day/waits.ts';
import type { LoafAnswers } from '../../../src/core/log/loaf-names.ts';
import { LOAF_MODEL, readLoaf } from '../../../src/core/log/read-loaf.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { Hand } from '../support/hand.ts';
import { walkTo, walkToEnd } from '../support/onward.ts';

/** A Friday in September, 7 o'clock, in the invented lane. */
const SEVEN = Date.UTC(2031, 8, 5, 7);

const must = (taken: boolean): void => {
  if (!taken) throw new Error('A step of the golden cut loaf is refused.');
};

/** A cut loaf of the bake with this start, as it is read. */
export const cutDeed = (target: string, answers: LoafAnswers): Extract<Deed, { kind: 'cut' }> => {
  const { says, causes, change, because } = readLoaf(answers, {});
  return {
    kind: 'cut',
    target,
    answers,
    read: { says, causes, change, because, model: LOAF_MODEL },
  };
};

/**
 * A bake whose loaf is cut once it is over, and looked at again a day later with the next bake under way: a
 * cut that says what to change, and one that says to keep it so.
 */
export const goldenCut = (): readonly LogRecord[] => {
  const hand = new Hand({ now: SEVEN, wait: waitFor });
  must(hand.start('wheat', 'mix.weigh', ['wheat.1']));
  const first = hand.records.at(-1)!.fact.id;
  walkToEnd(hand, 'wheat');
  hand.turn(120);
  must(hand.do(cutDeed(first, { crumb: 'gummy', base: 'tight', spread: 'burst' })));
  hand.turn(20 * 60);
  must(hand.start('next', 'levain.ripe', ['next.1']));
  must(hand.press('next', 'starterKept'));
  must(hand.do(cutDeed(first, { crumb: 'even', spread: 'tall', base: 'unsure' })));
  must(hand.takeBack());
  walkTo(hand, 'next', 'oven.queued', 'next');
  must(hand.do(cutDeed(first, { crumb: 'even', spread: 'tall', base: 'even' })));
  walkToEnd(hand, 'next');
  return hand.records;
};
