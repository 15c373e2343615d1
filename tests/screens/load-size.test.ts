import { describe, expect, it } from 'vitest';
import { ANY_POT, EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { STONE } from '../machines/support/recipe.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const see = (hand: Hand, pots: object[], bake = 'a') =>
  benchView(hand.kitchen, focusOn(hand.kitchen, bake)!, () => '12:00', null, METRIC, {
    ...EQUIPMENT,
    stones: 2,
    pots: pots.map((pot) => ({ ...ANY_POT, ...pot })),
  });

/** The slab's own deed, done. */
const slab = (hand: Hand, pots: object[], bake = 'a') => {
  const { deed } = see(hand, pots, bake).slab;
  if (deed?.kind !== 'press') throw new Error('The slab does nothing.');
  expect(hand.do(deed)).toBe(true);
  return deed;
};

/** At the load of the first loaf, the oven turned on by the slab, so that its pots are known. */
const atLoad = (pots: object[], recipe?: typeof STONE): Hand => {
  const hand = new Hand();
  hand.start('a', 'oven.queued', ['a1', 'a2', 'a3'], recipe);
  slab(hand, pots);
  return walkTo(hand, 'oven', 'load');
};

describe('a load', () => {
  it('is one loaf into the one pot there is', () => {
    const hand = atLoad([{}]);
    expect(see(hand, [{}]).place).toBe('Oven · load 1 of 3');
    expect(slab(hand, [{}])).toMatchObject({ act: 'loaded', loaves: ['a1'], lane: 'lane.pot' });
    expect(see(hand, [{}]).place).toBe('Oven · load 1 of 3');
  });

  it('is one loaf a pot, each named, until every pot is full', () => {
    const hand = atLoad([{}, {}]);
    expect(see(hand, [{}, {}])).toMatchObject({
      place: 'Oven · loaf 1 of 3',
      headline: 'Load the left pot, lid on',
    });
    expect(slab(hand, [{}, {}])).toMatchObject({ loaves: ['a1'], lane: 'lane.left' });
    walkTo(hand, 'oven', 'load');
    expect(see(hand, [{}, {}]).headline).toBe('Load the right pot, lid on');
    expect(slab(hand, [{}, {}])).toMatchObject({ loaves: ['a2'], lane: 'lane.right' });
    expect(Object.keys(hand.kitchen.lanes)).toEqual(['lane.left', 'lane.right']);
    expect(see(hand, [{}, {}]).place).toBe('Left pot · loaf 1 of 3');
  });

  it('leaves out a pot that may crack, and heats one where none is fit: it is told of before', () => {
    const glass = { material: 'glass' };
    expect(atLoad([{}, glass]).kitchen.oven.context.lanes).toEqual(['lane.left']);
    expect(atLoad([glass]).kitchen.oven.context.lanes).toEqual(['lane.pot']);
  });

  it('on a stone is as many as lie on it', () => {
    const hand = atLoad([{}], STONE);
    expect(see(hand, [{}]).slab.deed).toMatchObject({ loaves: ['a1', 'a2'] });
  });

  it('of two bakes puts each loaf in a pot of its own, with its own minutes', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1']);
    hand.start('b', 'oven.queued', ['b1']);
    slab(hand, [{}, {}]);
    walkTo(hand, 'oven', 'load');
    slab(hand, [{}, {}]);
    walkTo(hand, 'oven', 'load', 'b');
    expect(slab(hand, [{}, {}], 'b')).toMatchObject({ loaves: ['b1'], lane: 'lane.right' });
    expect(see(hand, [{}, {}]).stage).toBe('lidded');
    expect(see(hand, [{}, {}], 'b').stage).toBe('lidded');
  });
});
