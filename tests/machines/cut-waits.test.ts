import { expect, it } from 'vitest';
import { cutWaits } from '../../src/core/log/cut-waits.ts';
import { DAY, HOUR } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { walkToEnd } from './support/onward.ts';

it('waits from the note on until a loaf of it was looked at, or two days are over', () => {
  const hand = new Hand();
  hand.start('a', 'mix.first');
  expect(cutWaits(hand.records, hand.now)).toBe(false);
  walkToEnd(hand, 'a');
  const over = hand.now;
  expect(cutWaits(hand.records, over)).toBe(true);
  expect(cutWaits(hand.records, over + 2 * DAY - HOUR)).toBe(true);
  expect(cutWaits(hand.records, over + 2 * DAY + HOUR)).toBe(false);
  while (!('a' in hand.kitchen.bakes)) expect(hand.takeBack()).toBe(true);
  expect(cutWaits(hand.records, hand.now)).toBe(false);
  walkToEnd(hand, 'a');
  expect(cutWaits(hand.records, hand.now)).toBe(true);
  const start = hand.records.find(({ fact }) => fact.kind === 'start')!.fact.id;
  const read = { says: 'well', causes: [], change: null, because: [], model: 'test' } as const;
  expect(hand.do({ kind: 'cut', target: start, answers: { crumb: 'even' }, read })).toBe(true);
  expect(cutWaits(hand.records, hand.now)).toBe(false);
});
