import { describe, expect, it } from 'vitest';
import { firstWater, reckonedDough } from '../../src/core/day/mix-water.ts';
import { mixInput, offsetsOf } from '../../machines/kitchen/mixes.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { Hand } from './support/hand.ts';
import { walkTo } from './support/onward.ts';

const bakeOf = (hand: Hand, id: string) => hand.kitchen.bakes[id]!;
const inputOf = (hand: Hand, id: string) => mixInput(hand.kitchen, bakeOf(hand, id));
const offsets = (hand: Hand, id: string) => offsetsOf(hand.kitchen, bakeOf(hand, id));
const mixedOf = (hand: Hand) =>
  hand.records.at(-1)!.fact.results?.find(({ mixed }) => mixed)?.mixed;

/**
 * A bake in a kitchen whose mixes come out `off` K above the balance: as warm as that and no warmer is
 * its dough measured, to a tenth. Hands back what the dough came to.
 */
const bakeIn = (hand: Hand, id: string, off: number): number => {
  hand.start(id, 'mix.weigh');
  walkTo(hand, id, 'mix.temperature', id);
  const celsius = Math.round((reckonedDough(inputOf(hand, id), hand.now)! + off) * 10) / 10;
  hand.dough(id, celsius);
  return celsius;
};
const week = 7 * 24 * 60;

describe('a kitchen’s mixes', () => {
  it('teach the next bake’s water, over three bakes', () => {
    const hand = new Hand();
    const came = ['a', 'b', 'c', 'd'].map((id) => {
      const celsius = bakeIn(hand, id, 2);
      hand.press(id, 'ended');
      hand.turn(week);
      return celsius;
    });
    expect(came[0]).toBe(27);
    // Half of what one bake told, two thirds of two, three quarters of three.
    expect(Math.abs(came[1]! - 26)).toBeLessThan(0.25);
    expect(Math.abs(came[2]! - 25.7)).toBeLessThan(0.25);
    expect(Math.abs(came[3]! - 25.5)).toBeLessThan(0.25);
    for (const [i, celsius] of came.entries()) {
      if (i > 0) expect(celsius).toBeLessThan(came[i - 1]!);
    }
    hand.start('e', 'mix.weigh');
    expect(offsets(hand, 'e')).toHaveLength(4);
    for (const offset of offsets(hand, 'e')) expect(offset).toBeCloseTo(2, 1);
    const unlearned = firstWater({ ...inputOf(hand, 'e'), offsets: [] })!;
    expect(firstWater(inputOf(hand, 'e'))!.celsius).toBeLessThan(unlearned.celsius - 2);
  });

  it('are measured by the first temperature alone, against what was poured', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    hand.measure('a', { what: 'water', celsius: 20, of: 'bowl' });
    walkTo(hand, 'a', 'mix.temperature');
    const reckoned = reckonedDough(inputOf(hand, 'a'), hand.now)!;
    expect(reckoned).toBeLessThan(24.6);
    hand.dough('a', 24);
    expect(mixedOf(hand)).toEqual({ reckoned, measured: 24 });
    hand.turn(20);
    hand.dough('a', 30);
    expect(mixedOf(hand)).toBeUndefined();
  });

  it('take a correction for the reading it mends, and no odd one', () => {
    const hand = new Hand();
    bakeIn(hand, 'a', 5);
    const target = hand.records.at(-1)!.fact.id;
    hand.do({ kind: 'correct', target, reading: { what: 'doughTemperature', celsius: 24 } });
    expect(mixedOf(hand)?.measured).toBe(24);
    hand.start('b', 'mix.weigh');
    expect(offsets(hand, 'b')).toEqual([expect.closeTo(-1, 1)]);
    walkTo(hand, 'b', 'mix.temperature', 'b');
    hand.measure('b', { what: 'doughTemperature', celsius: 39, odd: true });
    hand.start('c', 'mix.weigh');
    expect(offsets(hand, 'c')).toHaveLength(1);
  });

  it('teach nothing where nobody measured, the measure was taken back, or the dough was joined', () => {
    const hand = new Hand();
    hand.start('a', 'mix.weigh');
    walkTo(hand, 'a', 'bulk.between');
    bakeIn(hand, 'b', 2);
    hand.takeBack();
    hand.start('c', 'mix.work');
    walkTo(hand, 'c', 'mix.temperature', 'c');
    hand.dough('c', 27);
    hand.start('d', 'mix.weigh');
    expect(offsets(hand, 'd')).toEqual([]);
  });

  it('stand the same when the log is replayed, and after a jump', () => {
    const hand = new Hand();
    bakeIn(hand, 'a', 2);
    hand.press('a', 'ended');
    hand.start('b', 'mix.weigh');
    const again = replay(hand.records, hand.machines).kitchen;
    expect(offsetsOf(again, again.bakes['b']!)).toEqual(offsets(hand, 'b'));
    hand.do({ kind: 'jump', position: hand.records.at(-1)!.position });
    expect(offsets(hand, 'b')).toHaveLength(1);
    hand.start('c', 'mix.weigh');
    expect(offsets(hand, 'c')).toEqual(offsets(hand, 'b'));
  });
});
