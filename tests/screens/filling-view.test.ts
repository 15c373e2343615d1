import { afterEach, describe, expect, it } from 'vitest';
import { speakOf } from '../../src/app/speak-of.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { de } from '../../src/core/speech/de.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView, type BenchView } from '../../src/screens/bench/view.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, SCOOP, SEEDED, TIN } from '../machines/support/recipe.ts';

afterEach(() => speakIn('en'));

const METRIC = { heat: 'C', weight: 'g' } as const;
/** A number that sounds like another is said again digit by digit. */
const GRAMS = 'one hundred and thirty, one three zero, grams';
const hour = (): string => '12:00';
const see = (hand: Hand): BenchView =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, questionView, METRIC);
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const labels = ({ lines }: BenchView): string[] =>
  lines.map(({ label, state }) => `${state} ${plain(label)}`);
const standing = (stage: string, recipe: Recipe, from: string): Hand => {
  const hand = new Hand();
  hand.start('a', from, ['a1', 'a2'], recipe);
  return walkTo(hand, 'a', stage);
};
/** The slab is pressed. */
const slab = (hand: Hand): void => {
  expect(hand.do(see(hand).slab.deed!)).toBe(true);
};

const NO_SHEET = { ...TIN, process: { ...TIN.process, touches: [] } };

describe('the fillings of a sheet', () => {
  it('are shown one after the other with their grams, and the slab ticks the one shown', () => {
    const hand = standing('bulk.scatter', RECIPE, 'mix.first');
    const first = see(hand);
    expect(plain(first.headline)).toBe('130 g Dried cherries');
    expect(first.detail).toBe('Dry and cool. Leave a 3 cm bare edge.');
    expect(first.slab).toMatchObject({
      label: 'It’s scattered',
      then: 'then Hazelnuts',
      deed: { act: 'answer', item: 'filling:cherry', value: '130' },
    });
    expect([first.third, first.progress]).toEqual(['sheet', { done: 0, of: 2 }]);
    expect(labels(first)).toEqual(['now 130 g Dried cherries', 'next 130 g Hazelnuts']);
    slab(hand);
    const second = see(hand);
    expect(second.slab.then).toBe('then roll it up');
    expect(labels(second)).toEqual(['done 130 g Dried cherries', 'now 130 g Hazelnuts']);
    hand.takeBack();
    expect(see(hand)).toEqual(first);
    slab(hand);
    slab(hand);
    expect(see(hand).headline).toBe('Roll the dough up');
  });

  it('are said each with its grams, how all is scattered with the first of them alone', () => {
    const hand = standing('bulk.scatter', RECIPE, 'mix.first');
    const how = 'Three centimetres stay bare at the edge. Scatter the filling.';
    expect(see(hand).spoken).toBe(`${GRAMS} of Dried cherries. ${how}`);
    const entered = { who: 'a', stage: 'bulk.scatter' };
    const words = speakOf(entered, hand.kitchen, hour, METRIC, EQUIPMENT)!;
    expect(words.startsWith(`${GRAMS} of Dried cherries. ${how}`), words).toBe(true);
    expect(words).toMatch(/allergens: name them\.$/);
    slab(hand);
    expect(see(hand).spoken).toBe(`${GRAMS} of Hazelnuts.`);
  });

  it('of one name are two, and an older bake has all of them in with one press', () => {
    const hand = standing('bulk.scatter', SEEDED, 'mix.first');
    expect(labels(see(hand))).toEqual(['now 70 g Seeds', 'next 35 g Seeds', 'next 155 g Oats']);
    slab(hand);
    expect(plain(see(hand).headline)).toBe('35 g Seeds');
    const older = standing('bulk.scatter', { ...SEEDED, fillingAtOnce: true }, 'mix.first');
    expect(see(older)).toMatchObject({ headline: 'Scatter the filling', progress: null });
    expect(labels(see(older))).toEqual(['next 70 g Seeds', 'next 35 g Seeds', 'next 155 g Oats']);
    slab(older);
    expect(see(older).headline).toBe('Roll the dough up');
  });

  it('that has none keeps its words', () => {
    const bare = { ...RECIPE, lines: { ...RECIPE.lines, filling: [] } };
    const view = see(standing('bulk.scatter', bare, 'mix.first'));
    expect(view).toMatchObject({ headline: 'Scatter the filling', lines: [], progress: null });
    expect(view.spoken).toBe('Three centimetres stay bare at the edge. Scatter the filling.');
  });
});

describe('a filling that no sheet takes in', () => {
  it.each([
    ['shape.finalShape', NO_SHEET, 'shape.divide', 'Shape each loaf'],
    ['shape.scoop', SCOOP, 'shape.scoop', 'Put the dough in the tins'],
  ])('is ticked at %s, and then its own act is there', (stage, recipe, from, act) => {
    const hand = standing(stage, recipe, from);
    const first = see(hand);
    expect(plain(first.headline)).toBe('130 g Dried cherries');
    expect(first.spoken).toBe(`${GRAMS} of Dried cherries. Work it in.`);
    expect(first.care).toMatch(/^Raw dough .* allergens: name them\.$/);
    expect(first.slab).toMatchObject({ label: 'It’s in', then: 'then Hazelnuts' });
    slab(hand);
    expect(see(hand).slab.then).toBe('then give it its shape');
    slab(hand);
    expect(see(hand)).toMatchObject({ stage, headline: act, progress: null, lines: [] });
    slab(hand);
    expect(hand.stage('a')).not.toBe(stage);
  });

  it('tells of one that spoils, at its own line, when it comes out of the fridge', () => {
    const spoils = { key: 'perishableFilling', values: { filling: 'Hazelnuts' } };
    const hand = standing('shape.scoop', { ...SCOOP, warnings: [spoils] }, 'shape.scoop');
    expect(see(hand).detail).toBe('Work it through evenly, the same in each loaf.');
    slab(hand);
    expect(see(hand).detail).toMatch(/^Hazelnuts spoils: out of the fridge .* within 2 hours\./);
  });

  it('tells it of one that is shown in another tongue too', () => {
    const filling = SCOOP.lines.filling.map((line) =>
      line.item === 'filling:cherry' ? { ...line, name: 'fresh herbs' } : line,
    );
    const spoils = { key: 'perishableFilling', values: { filling: 'fresh herbs' } };
    const recipe = { ...SCOOP, lines: { ...SCOOP.lines, filling }, warnings: [spoils] };
    const hand = standing('shape.scoop', recipe, 'shape.scoop');
    speakIn('de', de);
    const { headline, spoken, detail, slab: its } = see(hand);
    expect(plain(headline)).toBe('130 g frische Kräuter');
    expect(spoken).toContain('frische Kräuter');
    expect(detail).toMatch(/^frische Kräuter: verdirbt.*2 Stunden/);
    expect(its.then).toContain('Hazelnuts');
  });

  it('is not named where there is none', () => {
    const bare = { ...SCOOP, lines: { ...SCOOP.lines, filling: [] } };
    const view = see(standing('shape.scoop', bare, 'shape.scoop'));
    expect([view.headline, view.care]).toEqual([
      'Put the dough in the tins',
      expect.not.stringContaining('allergens'),
    ]);
  });
});
