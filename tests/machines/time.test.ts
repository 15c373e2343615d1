import { describe, expect, it } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { Hand } from './support/hand.ts';
import { at } from './support/onward.ts';

describe('time', () => {
  it('set back on the wall never runs back in the log, and no due is lost', () => {
    const hand = at(new Hand(), 'bulk.proving');
    const look = hand.deadline('a')!;
    hand.turnTo(look + MINUTE);
    hand.wallBack(100);
    expect(hand.heard('a')).toBe(true);
    const heard = hand.records.at(-1)!.fact;
    const before = hand.records.at(-2)!.fact;
    expect(heard.raw).toBeLessThan(look);
    expect(heard.at).toBe(look + MINUTE);
    expect(heard.at).toBeGreaterThan(before.at);
    const { kitchen, trouble } = hand.replayed();
    expect(trouble).toBeNull();
    expect(kitchen.bakes['a']!.context.entered['bulk.look']).toBe(look);
  });

  it('set back while a wait runs keeps the wait’s length', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    hand.turn(8).wallBack(300).turn(9);
    expect(hand.ringing).toBeNull();
    hand.turn(1);
    expect(hand.ringing).toBe('lane.pot:lift');
  });

  it('lets every deadline fall due at its own instant, however late the clock is read', () => {
    const hand = new Hand();
    hand.start('a', 'bulk.proving');
    hand.start('b', 'shape.benchRest');
    hand.start('c', 'cool.cooling');
    const due = (bake: string) => hand.deadline(bake)!;
    const [look, rested, cool] = [due('a'), due('b'), due('c')];
    hand.turn(9 * 60);
    const entered = (bake: string) => hand.kitchen.bakes[bake]!.context.entered;
    expect(entered('a')['bulk.look']).toBe(look);
    expect(entered('b')['shape.finalShape']).toBe(rested);
    expect(entered('c')['cool.handOver']).toBe(cool);
    expect(hand.says.slice(-3).map(({ who }) => who)).toEqual(['b', 'c', 'a']);
  });

  it('at exactly a deadline takes the due before the press', () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.wall += 180 * MINUTE;
    expect(hand.press('a', 'doughSeen')).toBe(false);
    expect(hand.press('a', 'bulkReady')).toBe(true);
    expect(hand.kitchen.bakes['a']!.context.entered['bulk.look']).toBe(hand.now);
  });

  it('one moment before a deadline takes the press', () => {
    const hand = at(new Hand(), 'bulk.proving');
    hand.wall += 180 * MINUTE - 1;
    expect(hand.press('a', 'doughSeen')).toBe(true);
    expect(hand.kitchen.bakes['a']!.context.byDue).toBe(false);
  });

  it('of two deadlines at one instant the oven’s falls due first, then bakes by name', () => {
    const hand = at(new Hand(), 'lidded', 'oven.queued');
    hand.start('d', 'bulk.fold');
    hand.start('c', 'bulk.fold');
    for (const bake of ['d', 'c']) hand.press(bake, 'folded');
    hand.do({ kind: 'jump', position: atOneInstant(hand) });
    hand.turn(60);
    expect(hand.says.slice(-3).map(({ who }) => who)).toEqual(['lane.pot', 'c', 'd']);
  });
});

/** The same kitchen, all its waits ending together. */
const atOneInstant = (hand: Hand) => {
  const position = hand.fold.positionOf(hand.kitchen);
  const end = hand.now + 30 * MINUTE;
  return {
    ...position,
    oven: { ...position.oven, marks: { lid: end } },
    bakes: Object.fromEntries(
      Object.entries(position.bakes).map(([id, place]) => [
        id,
        place.stage === 'bulk.between' ? { ...place, marks: { touch: end } } : place,
      ]),
    ),
  };
};
