import { describe, expect, it } from 'vitest';
import { ANY_POT, EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { at } from '../machines/support/onward.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;
const see = (hand: Hand, pots: number) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, () => '12:00', null, METRIC, {
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
});
