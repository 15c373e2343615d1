import { describe, expect, it } from 'vitest';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { JOINABLE } from '../../machines/kitchen/deliver.ts';
import { Hand } from './support/hand.ts';
import { at, stepOn, walkToEnd } from './support/onward.ts';

describe('a bake may be joined', () => {
  it.each(JOINABLE)('at %s, and be walked from there to its note and a cold oven', (from) => {
    const hand = new Hand();
    expect(hand.start('a', from)).toBe(true);
    expect(hand.stage('a')).toBe(from);
    walkToEnd(hand);
    expect(hand.kitchen.bakes).toEqual({});
    expect(hand.stage('oven')).toBe('off');
    expect(hand.replayed().trouble).toBeNull();
  });

  it('at every place where a baker can find the dough', () => {
    const places: BakeStage[] = ['levain.feed', 'mix.weigh', 'bulk.proving', 'shape.divide'];
    expect(JOINABLE).toEqual(expect.arrayContaining([...places, 'proof.retard', 'oven.queued']));
  });

  it('with its wait armed from the instant it joined', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    expect(hand.deadline('a')).toBe(hand.now + 180 * 60_000);
  });
});

describe('a start is refused', () => {
  const running = () => at(new Hand(), 'lidded', 'oven.queued');
  it.each([
    ['under the name of the oven', 'oven', ['z1']],
    ['under the name of a bake that runs', 'a', ['z1']],
    ['without a loaf', 'b', []],
    ['with a loaf named twice', 'b', ['b1', 'b1']],
    ['with a loaf of another bake', 'b', ['a2', 'b1']],
  ])('%s', (_, bake, loaves) => {
    const hand = running();
    const before = hand.kitchen;
    expect(hand.start(bake, 'oven.queued', loaves)).toBe(false);
    expect(hand.kitchen).toBe(before);
  });

  it('with a loaf that lies in the oven, though its bake was ended', () => {
    const hand = running();
    hand.press('a', 'ended');
    expect(hand.start('b', 'oven.queued', ['a1'])).toBe(false);
    while (hand.stage('oven') !== 'turnOff') stepOn(hand, 'oven');
    expect(hand.start('b', 'oven.queued', ['a1'])).toBe(false);
    hand.press('oven', 'ovenOff');
    expect(hand.start('b', 'oven.queued', ['a1'])).toBe(true);
    expect(hand.kitchen.oven.context.waiting).toEqual(['a1']);
  });

  it.each(['done', 'ended', 'bulk', 'oven'])('at %s, which is no place to stand', (from) => {
    const hand = new Hand();
    expect(hand.start('a', from)).toBe(false);
    expect(hand.kitchen.bakes).toEqual({});
  });

  it('at a stage these machines do not know, loudly', () => {
    expect(() => new Hand().start('a', 'bulk.nowhere')).toThrow('nowhere');
  });
});
