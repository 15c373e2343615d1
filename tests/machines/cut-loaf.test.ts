import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOf } from '../../src/core/log/cut-of.ts';
import { LOAF_SIGNS, SIGN_NAMES, type LoafAnswers } from '../../src/core/log/loaf-names.ts';
import { cutDeed } from './golden/cut.ts';
import { Hand } from './support/hand.ts';
import { walkToEnd } from './support/onward.ts';

const answers: fc.Arbitrary<LoafAnswers> = fc.record(
  Object.fromEntries(
    SIGN_NAMES.map((sign) => [sign, fc.constantFrom(...LOAF_SIGNS[sign], 'unsure')]),
  ),
  { requiredKeys: [] },
);
const GUMMY: LoafAnswers = { crumb: 'gummy', base: 'tight' };

describe('a cut loaf in the log', () => {
  it('moves no machine, no position and no instant, whatever it showed', () => {
    fc.assert(
      fc.property(
        answers,
        fc.constantFrom('mix.weigh', 'bulk.proving', 'oven.queued'),
        (said, at) => {
          const hand = new Hand();
          hand.start('a', at);
          const { position } = hand.records[0]!;
          const { bakes, oven, lanes, attention, timers, starter } = hand.kitchen;
          expect(hand.do(cutDeed('f1', said))).toBe(true);
          expect(hand.records[1]!.position).toEqual(position);
          expect(hand.kitchen).toMatchObject({ bakes, oven, lanes, attention, timers, starter });
          expect(hand.records[1]!.fact.results).toBeUndefined();
          expect(hand.replayed().trouble).toBeNull();
        },
      ),
      { numRuns: 25 },
    );
  });

  it('is of bread that is long gone too, and the last one of a bake stands', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    hand.start('b', 'mix.weigh');
    walkToEnd(hand, 'a');
    hand.turn(24 * 60);
    hand.do(cutDeed('f1', GUMMY));
    hand.do(cutDeed('f2', { crumb: 'even' }));
    hand.do(cutDeed('f1', { crumb: 'tight', base: 'unsure' }));
    expect(cutOf(hand.records, 'f1')!.answers).toEqual({ crumb: 'tight', base: 'unsure' });
    expect(cutOf(hand.records, 'f2')!.answers).toEqual({ crumb: 'even' });
    expect(cutOf(hand.records, 'f3')).toBeNull();
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is no press to take back: the loaf is looked at again', () => {
    const hand = new Hand();
    hand.start('a', 'levain.ripe');
    hand.press('a', 'starterKept');
    hand.do(cutDeed('f1', GUMMY));
    expect(hand.takeBack()).toBe(true);
    expect(hand.stage('a')).toBe('levain.ripe');
    expect(cutOf(hand.records, 'f1')!.answers).toEqual(GUMMY);
    const target = hand.records.find(({ fact }) => fact.kind === 'cut')!.fact.id;
    expect(hand.do({ kind: 'takeBack', target })).toBe(false);
  });

  it('is not written where it could not be read back', () => {
    const hand = new Hand();
    const whole = cutDeed('f1', GUMMY);
    expect(hand.do({ ...whole, target: '' })).toBe(false);
    expect(hand.do({ ...whole, answers: { crumb: 'blue' } as never })).toBe(false);
    expect(hand.do({ ...whole, read: { ...whole.read, model: '' } })).toBe(false);
    expect(hand.records).toEqual([]);
  });
});
