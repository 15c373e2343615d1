import { describe, expect, it } from 'vitest';
import { LISTS } from '../../src/core/records/lists.ts';
import type { Units } from '../../src/core/units.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, STONE, TIN } from '../machines/support/recipe.ts';

const METRIC: Units = { heat: 'C', weight: 'g' };
const HOUR_MIN = 60;
const MONTH = 30 * 24 * HOUR_MIN;
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand) =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, METRIC);
const standing = (stage: string, from = 'levain.feed') => {
  const hand = new Hand();
  hand.start('a', from);
  return walkTo(hand, 'a', stage);
};

describe('a bake left for a month', () => {
  it.each([
    ['levain.ripening', 'levain'],
    ['levain.look', 'levain'],
    ['levain.ripe', 'levain'],
    ['mix.first', 'dough'],
    ['mix.rest', 'dough'],
    ['mix.temperature', 'dough'],
    ['bulk.fold', 'dough'],
    ['bulk.proving', 'dough'],
    ['bulk.look', 'dough'],
    ['shape.divide', 'dough'],
    ['proof.toFridge', 'dough'],
    ['proof.retard', 'loaves'],
    ['proof.look', 'loaves'],
  ])('at %s: the %s is thrown away, and nothing calls it ready', (stage, what) => {
    const hand = standing(stage).turn(MONTH);
    const view = see(hand);
    expect(view.headline).toMatch(/^Throw (this|these) \w+ away$/);
    expect(view.headline).toContain(what);
    expect(view.ready).toBeNull();
    expect(view.tiles).toEqual([]);
    // It may be the clock that is wrong: that is asked, and one press says so.
    expect(view).toMatchObject({ third: 'clock', care: expect.stringContaining('clock wrong?') });
    expect(Object.values(view).join(' ')).not.toMatch(/NaN|Invalid|undefined/);
    expect(view.slab.deed).toEqual({ kind: 'press', who: 'a', act: 'ended' });
    expect(hand.do(view.slab.deed!)).toBe(true);
    expect(hand.kitchen.bakes).toEqual({});
    expect(hand.takeBack()).toBe(true);
    expect(hand.replayed().trouble).toBeNull();
  });

  it('is thrown away even when every sign was answered as ripe', () => {
    const hand = standing('levain.look');
    for (const item of LISTS.levainSigns) hand.answer('a', { [item]: 'notSure' });
    expect(see(hand).headline).not.toContain('Throw');
    hand.turn(MONTH);
    expect(see(hand).headline).toContain('Throw');
  });

  it.each([
    ['turnOn', RECIPE, 'loaves'],
    ['poke', RECIPE, 'loaves'],
    ['before', STONE, 'loaves'],
    ['load', RECIPE, 'loaves'],
    ['turnOn', TIN, 'dough'],
    ['load', TIN, 'dough'],
  ] as const)(
    'waiting for the oven at %s: it is thrown away, cold or hot',
    (stage, recipe, what) => {
      const hand = new Hand();
      hand.start('a', 'oven.queued', ['a1', 'a2'], recipe);
      walkTo(hand, 'oven', stage).turn(MONTH);
      const view = see(hand);
      expect(view.headline).toBe(`Throw ${what === 'dough' ? 'this' : 'these'} ${what} away`);
      expect(view).toMatchObject({ hazard: 'none', third: 'clock', tiles: [], ready: null });
      expect(hand.do(view.slab.deed!)).toBe(true);
      expect(hand.kitchen.bakes).toEqual({});
    },
  );

  it('with a loaf in the hot pot has that one taken out first', () => {
    const hand = new Hand();
    hand.start('a', 'oven.queued');
    walkTo(hand, 'oven', 'lidded').turn(MONTH);
    expect(see(hand).headline).toMatch(/^Lift the lid/);
  });

  it.each(['read.plan', 'levain.feed', 'mix.weigh', 'cool.handOver'])(
    'at %s: nothing has fermented there, and it goes on',
    (stage) => {
      const from = stage.startsWith('cool') ? 'oven.queued' : 'read.plan';
      const hand = standing(stage, from).turn(MONTH);
      expect(see(hand).headline).not.toContain('Throw');
    },
  );
});

describe('a bake that is only late', () => {
  it.each([
    ['levain.look', 12],
    ['bulk.look', 8],
    ['proof.look', 24],
  ])('at %s by %d hours is still judged by its signs', (stage, hours) => {
    const view = see(standing(stage).turn(hours * HOUR_MIN));
    expect(view.headline).not.toContain('Throw');
    expect(view.ready).not.toBeNull();
  });

  it('is seen to be left though no fact was written and nothing fell due', () => {
    const hand = standing('levain.ripe');
    const later = hand.now + MONTH * 60_000;
    const focus = focusOn(hand.kitchen, 'a')!;
    const view = benchView(hand.kitchen, focus, hour, questionView, METRIC, undefined, later);
    expect(view.headline).toContain('Throw');
  });
});
