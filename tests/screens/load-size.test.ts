import { describe, expect, it } from 'vitest';
import { ANY_POT, EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { at, walkTo } from '../machines/support/onward.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const see = (hand: Hand, pots: number, bake = 'a') =>
  benchView(hand.kitchen, focusOn(hand.kitchen, bake)!, () => '12:00', null, METRIC, {
    ...EQUIPMENT,
    pots: Array.from({ length: pots }, () => ANY_POT),
  });

describe('how many loaves a load takes', () => {
  it.each([
    [1, ['a1'], 'load 1 of 2'],
    [2, ['a1', 'a2'], 'load 1 of 1'],
    [3, ['a1', 'a2'], 'load 1 of 1'],
  ])('with %i pots', (pots, loaves, place) => {
    const view = see(at(new Hand(), 'load', 'oven.queued'), pots);
    expect(view.slab.deed).toMatchObject({ act: 'loaded', loaves });
    expect(view.place).toContain(place);
  });

  it('is one where no pot may be loaded hot: the baker decides, and was told before', () => {
    const hand = at(new Hand(), 'load', 'oven.queued');
    const view = benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, () => '12:00', null, METRIC, {
      ...EQUIPMENT,
      pots: [{ ...ANY_POT, material: 'glass' }],
    });
    expect(view.slab.deed).toMatchObject({ loaves: ['a1'] });
  });

  it('never fills up with another bake’s loaves, which have minutes of their own', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued', ['a1', 'a2', 'a3']);
    hand.start('b', 'oven.queued', ['b1', 'b2']);
    const loads: unknown[] = [];
    for (let n = 0; n < 3; n += 1) {
      walkTo(hand, 'oven', 'load', n < 2 ? 'a' : 'b');
      const { deed } = see(hand, 2, n < 2 ? 'a' : 'b').slab;
      if (deed?.kind !== 'press') throw new Error('The load press does nothing.');
      loads.push(deed.loaves);
      hand.do(deed);
      walkTo(hand, 'oven', 'unload', n < 2 ? 'a' : 'b');
      hand.press('oven', 'unloaded');
    }
    expect(loads).toEqual([['a1', 'a2'], ['a3'], ['b1', 'b2']]);
  });
});
