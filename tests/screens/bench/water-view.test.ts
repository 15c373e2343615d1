import { describe, expect, it } from 'vitest';
import { focusOn } from '../../../src/screens/focus.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { pouredNext, withWater } from '../../../src/screens/bench/water-view.ts';
import { whyOf } from '../../../src/screens/bench/why-water.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Units } from '../../../src/core/units.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const METRIC: Units = { heat: 'C', weight: 'g' };
const US: Units = { heat: 'F', weight: 'oz' };
const hour = (at: number) => new Date(at).toISOString().slice(11, 16);

const see = (hand: Hand, units = METRIC): BenchView => {
  const focus = focusOn(hand.kitchen, 'a')!;
  return withWater(benchView(hand.kitchen, focus, hour, null, units), hand.kitchen, focus, units);
};
const why = (hand: Hand, units = METRIC) => {
  const focus = focusOn(hand.kitchen, 'a')!;
  return whyOf(pouredNext(hand.kitchen, focus, stageOf(focus.machine))!, units);
};
const begun = (stage = 'mix.weigh', kitchen = 20, recipe: Recipe = RECIPE): Hand => {
  const hand = new Hand();
  const loaves = ['a1', 'a2'];
  hand.do({ kind: 'start', bake: 'a', loaves, from: stage, recipe, kitchen });
  return hand;
};
/** At the line of the water. */
const atWater = (kitchen?: number): Hand => {
  const hand = begun('mix.weigh', kitchen);
  hand.answer('a', { 'flour:wheat': '790' });
  return hand;
};

describe('the water at the mix', () => {
  it('stands at its line from the first one on, so that it can be made ready', () => {
    const { headline, target, lines } = see(begun());
    expect(headline).toBe('790 g Wheat flour');
    expect(target).toBeNull();
    expect(lines.map(({ label }) => label)).toEqual([
      '790 g Wheat flour',
      '520 g water, 27 °C',
      '160 g levain',
    ]);
  });

  it('is the number to hit at its line, with its doubt beside it', () => {
    // (790 · 1.84 + 80 · 1.84 + 80 · 4.185) · 5 K − 7.55 · 790, over 520 · 4.185: 1.7 K above 25.
    const { target, lines } = see(atWater());
    expect(target).toEqual({
      value: '27 °C',
      label: 'for dough at 25 °C',
      range: 'or 24 to 29 °C',
      opens: 'why',
    });
    expect(lines).toEqual([]);
  });

  it('is said at its line with its unit, and what it is guessed from', () => {
    const { detail, spoken } = see(atWater());
    expect(detail).toBe('A guess: flour and levain as warm as the kitchen.');
    expect(spoken).toBe(
      'five hundred and twenty grams of water, at twenty-seven degrees. ' +
        'A guess: flour and levain as warm as the kitchen.',
    );
  });

  it('is told in the baker’s own units', () => {
    const { target, spoken } = see(atWater(), US);
    expect(target?.value).toBe('80 °F');
    expect(target?.label).toBe('for dough at 77 °F');
    expect(spoken).toContain('at eighty, eight zero, degrees Fahrenheit.');
  });

  it('no longer guesses what was measured', () => {
    const hand = atWater();
    hand.measure('a', { what: 'flourTemperature', celsius: 16 });
    expect(see(hand).target?.value).toBe('29 °C');
    expect(see(hand).detail).toBe('A guess: levain as warm as the kitchen.');
    hand.measure('a', { what: 'levainTemperature', celsius: 24 });
    expect(see(hand).detail).not.toContain('guess');
  });

  it('is of ice where the tap is too warm: grams taken off the water, in ounces too', () => {
    const hand = atWater(31);
    hand.measure('a', { what: 'water', celsius: 22, of: 'tap' });
    const { detail, spoken } = see(hand);
    const grams = Number(
      /^(\d+) g of it as ice\. The rest is from the cold tap\./.exec(detail)?.[1],
    );
    expect(grams).toBeGreaterThan(20);
    expect(grams).toBeLessThan(120);
    expect(spoken).toMatch(/grams of it as ice/);
    expect(see(hand, US).detail).toMatch(/^[\d.]+ oz of it as ice/);
  });

  it('says that an unmeasured tap is a guess, where that matters', () => {
    expect(see(atWater(36)).detail).toContain('A guess: the cold tap at 15 °C.');
  });

  it('is never hotter than 40 °C, and says that the dough starts cooler then', () => {
    const hand = atWater(8);
    hand.measure('a', { what: 'flourTemperature', celsius: 2 });
    const { target, detail } = see(hand);
    expect(target?.value).toBe('40 °C');
    expect(detail).toMatch(/^No hotter: it starts at 2[34] °C and takes longer\./);
  });

  it('goes with its own line, and does not come at other steps', () => {
    const hand = atWater();
    hand.answer('a', { water: '520' });
    expect(see(hand).target).toBeNull();
    walkTo(hand, 'a', 'mix.first');
    expect(see(hand).target).toBeNull();
  });

  it('comes again for the second water, after the salt was named', () => {
    const hand = begun();
    walkTo(hand, 'a', 'mix.salt');
    hand.answer('a', { salt: '16.5' });
    expect(see(hand).target).toMatchObject({ label: 'for dough at 25 °C', range: null });
    expect(see(hand).spoken).toMatch(/^sixty-five grams of second water, at /);
  });

  it('says in one sentence what the last doughs taught', () => {
    const hand = begun();
    walkTo(hand, 'a', 'mix.temperature');
    hand.dough('a', 27);
    hand.press('a', 'ended');
    hand.start('a', 'mix.weigh', ['x'], RECIPE);
    hand.answer('a', { 'flour:wheat': '790' });
    expect(see(hand).detail).toMatch(
      /^Your last doughs came out 2 °C warmer: cooler water\. A guess/,
    );
    expect(see(hand, US).detail).toMatch(/^Your last doughs came out [34] °F warmer/);
    expect(why(hand).words).toContain(
      'Your last dough came out 2 °C warmer than reckoned. The water makes up for half.',
    );
  });
});

describe('the water of a feed', () => {
  it('has its own number, and guesses that the starter is out of the fridge', () => {
    const hand = begun('levain.feed');
    hand.answer('a', { seed: '40', flour: '80' });
    const { target, detail } = see(hand);
    expect(target?.label).toBe('for levain at 25 °C');
    expect(detail).toBe('A guess: starter at 4 °C, from the fridge.');
    hand.measure('a', { what: 'levainTemperature', celsius: 19 });
    expect(see(hand).detail).not.toContain('guess');
    expect(Number.parseInt(see(hand).target!.value, 10)).toBeLessThan(
      Number.parseInt(target!.value, 10),
    );
  });
});

describe('why the water is so warm', () => {
  it('names what went into the sum, and what of it was measured', () => {
    const hand = atWater();
    hand.measure('a', { what: 'flourTemperature', celsius: 16 });
    expect(why(hand)).toMatchObject({
      title: 'Why water at 29 °C?',
      rows: [
        { name: 'Wanted in the dough', value: '25 °C, as is usual' },
        { name: 'Flour', value: '16 °C, measured' },
        { name: 'Levain', value: '20 °C, a guess' },
        { name: 'Kitchen', value: '20 °C, as you told me' },
      ],
    });
  });

  it('gives the rule of thumb as a second opinion, and why it differs', () => {
    // 4 · 25 − 3 · 20 − 1.5
    const words = why(atWater()).words.find((text) => text.includes('rule of thumb'));
    expect(words).toMatch(/^The rule of thumb says 39 °C\. .* a second opinion\.$/);
    expect(why(begun('levain.feed')).words.join(' ')).not.toContain('rule of thumb');
  });

  it('is in the baker’s own units throughout', () => {
    const { title, rows, words } = why(atWater(8), US);
    const all = [title, ...rows.map(({ value }) => value), ...words].join(' ');
    expect(all).toContain('°F');
    expect(all).not.toContain('°C');
  });
});
