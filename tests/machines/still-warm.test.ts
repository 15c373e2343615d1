import { describe, expect, it } from 'vitest';
import { stillWarm } from '../../src/core/circle/still-warm.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { WaitModel } from '../../machines/kitchen/results.ts';
import { Hand, plainWait } from './support/hand.ts';
import { stepOn, walkTo, walkToEnd } from './support/onward.ts';
import { TIN } from './support/recipe.ts';

const BREAD = 'test-cherry';
const warm = (hand: Hand) => stillWarm(hand.records, hand.now);
const fromOven = (loaves = ['a1']): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', loaves);
  return hand;
};

/** Cooled by its process in 20 min. */
const soonCool: WaitModel = (input) =>
  input.stage === 'cool.cooling'
    ? { marks: { end: input.now + 20 * MINUTE }, model: 'plain' }
    : plainWait(input);

describe('whether a bread is still warm', () => {
  it('is not said where nothing bakes, and not before a loaf is out', () => {
    const hand = new Hand();
    expect(warm(hand)).toEqual({});
    hand.start('a', 'shape.divide', ['a1']);
    walkTo(hand, 'a', 'oven.queued');
    expect(warm(hand)).toEqual({});
  });

  it('is warm from the last loaf out for the minutes of its cooling', () => {
    const hand = walkTo(fromOven(), 'a', 'cool.cooling');
    const out = hand.now;
    expect(warm(hand)).toEqual({ [BREAD]: { until: out + 120 * MINUTE } });
    hand.turn(119);
    expect(warm(hand)).toEqual({ [BREAD]: { until: out + 120 * MINUTE } });
    hand.turn(1);
    expect(warm(hand)).toEqual({});
  });

  it('has no hour while a loaf of it is still to come out', () => {
    const hand = fromOven(['a1', 'a2']);
    for (let n = 0; hand.kitchen.oven.context.out.length === 0 && n < 40; n += 1)
      stepOn(hand, 'oven');
    expect(hand.stage('a')).toBe('oven.queued');
    expect(warm(hand)).toEqual({ [BREAD]: { until: null } });
  });

  it('is cool when the baker said so, and stays warm once more where that is taken back', () => {
    const hand = walkTo(fromOven(), 'a', 'cool.cooling');
    const until = hand.now + 120 * MINUTE;
    hand.turn(70);
    hand.press('a', 'cooled');
    expect(warm(hand)).toEqual({});
    hand.takeBack();
    expect(warm(hand)).toEqual({ [BREAD]: { until } });
  });

  it('is cool after a bake that was finished sooner, by what was said there', () => {
    const hand = walkTo(fromOven(), 'a', 'cool.cooling');
    hand.turn(20);
    for (const act of ['cooled', 'handedOver', 'noted']) hand.press('a', act);
    expect(hand.stage('a')).toBeNull();
    expect(warm(hand)).toEqual({});
  });

  it('outlasts the end of a bake whose minutes of cooling were few', () => {
    const hand = new Hand({ wait: soonCool });
    const quick = { ...TIN, process: { ...TIN.process, cool: 20 } };
    hand.start('a', 'oven.queued', ['a1'], quick);
    const out = walkTo(hand, 'a', 'cool.cooling').now;
    walkToEnd(hand);
    expect(hand.stage('a')).toBeNull();
    // 60 min at least: sooner no loaf is under 35 °C.
    expect(warm(hand)).toEqual({ [BREAD]: { until: out + 60 * MINUTE } });
    hand.turnTo(out + 60 * MINUTE);
    expect(warm(hand)).toEqual({});
  });

  it('is warm while either of two bakes is', () => {
    const hand = walkTo(fromOven(), 'a', 'cool.cooling');
    hand.turn(60);
    hand.start('b', 'oven.queued', ['b1']);
    walkTo(hand, 'b', 'cool.cooling', 'b');
    expect(warm(hand)).toEqual({ [BREAD]: { until: hand.now + 120 * MINUTE } });
  });

  it('is not called warm by an old log', () => {
    const hand = fromOven();
    walkToEnd(hand);
    hand.turn(3000);
    hand.start('b', 'shape.divide', ['b1']);
    expect(warm(hand)).toEqual({});
  });
});
