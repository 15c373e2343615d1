import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredientKey } from '../../../src/core/circle/ingredient-key.ts';
import { usesOf, usesTogether } from '../../../src/core/circle/uses.ts';
import { SHIPPED } from '../formula/shipped.ts';
import { recipeOf } from './support.ts';

describe('the name an ingredient stands under', () => {
  it('is one for all ways to write it', () => {
    expect(ingredientKey(' Cre\u0300me\u00a0 FRAÎCHE ')).toBe('crème fraîche');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        const key = ingredientKey(name);
        expect(ingredientKey(key)).toBe(key);
        expect(ingredientKey(` ${name.normalize('NFD')}\t`)).toBe(key);
      }),
    );
  });
});

describe('what a bake takes from the cupboard', () => {
  it('is its flour with the feed’s, its salt and its fillings, each once', () => {
    const recipe = recipeOf('cherry-hazelnut', 4);
    const weighed = (item: string): number =>
      Object.values(recipe.lines)
        .flat()
        .filter((line) => line.item === item)
        .reduce((sum, { grams }) => sum + grams, 0);
    const uses = usesOf(recipe);
    expect(uses.map(({ name }) => name)).toEqual([
      'strong wheat flour',
      'whole rye flour',
      'salt',
      'dried cherries',
      'toasted hazelnuts',
    ]);
    const [wheat] = uses;
    expect(wheat!.grams).toBeCloseTo(weighed(`flour:${recipe.formula.flours[0]!.id}`), 9);
    expect(recipe.lines.feed.some(({ item }) => item.startsWith('flour:'))).toBe(true);
  });

  it('is no water, no soaking water, no levain and no seed', () => {
    for (const name of SHIPPED) {
      const recipe = recipeOf(name, 3);
      const items = Object.values(recipe.lines).flat();
      const own = items.filter(({ item }) => /water|soak:|seed$|levain/i.test(item));
      expect(own.length).toBeGreaterThan(2);
      const sum = usesOf(recipe).reduce((all, { grams }) => all + grams, 0);
      const rest = items.filter((line) => !own.includes(line));
      expect(sum).toBeCloseTo(
        rest.reduce((all, { grams }) => all + grams, 0),
        6,
      );
      for (const { name: ingredient } of usesOf(recipe)) expect(ingredient).not.toMatch(/water/);
    }
    const soaked = recipeOf('seed-oat', 2);
    expect(soaked.lines.filling.some(({ item }) => item.startsWith('soak:'))).toBe(true);
  });

  it('is the same of several bakes in any order, and nothing is lost', () => {
    const use = fc.record({
      id: fc.constantFrom('rye', 'wheat', 'salt'),
      name: fc.constant('x'),
      grams: fc.integer({ min: 0, max: 5000 }),
    });
    fc.assert(
      fc.property(fc.array(use), (uses) => {
        const sorted = (all: typeof uses) =>
          usesTogether(all)
            .map(({ id, grams }) => `${id} ${grams}`)
            .toSorted();
        expect(sorted(uses)).toEqual(sorted(uses.toReversed()));
        const sum = (all: readonly { grams: number }[]) => all.reduce((s, o) => s + o.grams, 0);
        expect(sum(usesTogether(uses))).toBe(sum(uses));
      }),
    );
  });
});
