import { describe, expect, it } from 'vitest';
import type { Process } from '../../src/core/formula/formula.ts';
import { makeRecipe } from '../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { isTicked, tickedLines } from '../../src/core/records/ticked.ts';
import { SHIPPED, shippedFormula } from './formula/shipped.ts';

const recipeOf = (name: (typeof SHIPPED)[number], process: Partial<Process> = {}): Recipe => {
  const formula = shippedFormula(name);
  const { recipe } = makeRecipe(
    { ...formula, process: { ...formula.process, ...process } },
    { loaves: 2, piece: 900 },
  );
  return recipe!;
};
const items = (recipe: Recipe, list: 'filling' | 'worked'): string[] =>
  tickedLines(recipe, list).map(({ item }) => item);

describe('what is ticked', () => {
  it('is what the recipe has of a weigh card, as it stands', () => {
    const recipe = recipeOf('seed-oat');
    for (const list of ['feed', 'first', 'second'] as const)
      expect(tickedLines(recipe, list)).toEqual(recipe.lines[list]);
  });

  it('is every filling by itself, those of one group too, a soaker with its water in it', () => {
    const recipe = recipeOf('seed-oat');
    expect(items(recipe, 'filling')).toEqual(['filling:pumpkin', 'filling:sesame', 'filling:oats']);
    const grams = (item: string, lines: Recipe['lines']['filling']): number =>
      lines.find((line) => line.item === item)!.grams;
    const { filling } = recipe.lines;
    expect(grams('filling:oats', tickedLines(recipe, 'filling'))).toBe(
      grams('filling:oats', filling) + grams('soak:oats', filling),
    );
  });

  it('goes in with the sheet where there is one, else as the loaves get their shape', () => {
    const folded = recipeOf('cherry-hazelnut', { touches: [{ kind: 'fold', after: 30 }] });
    const both = ['filling:cherry', 'filling:hazelnut'];
    expect([items(folded, 'filling'), items(folded, 'worked')]).toEqual([[], both]);
    const laminated = recipeOf('cherry-hazelnut');
    expect([items(laminated, 'filling'), items(laminated, 'worked')]).toEqual([both, []]);
  });

  it('is nothing in a plain bread, and nothing of an older bake’s filling', () => {
    for (const name of SHIPPED) {
      const recipe = recipeOf(name);
      const older = { ...recipe, fillingAtOnce: true as const };
      for (const list of ['filling', 'worked'] as const) {
        expect(items(older, list), name).toEqual([]);
        if (recipe.formula.fillings.length === 0) expect(items(recipe, list), name).toEqual([]);
      }
    }
  });

  it('is no checklist', () => {
    expect(isTicked('filling')).toBe(true);
    expect(isTicked('beforeStart')).toBe(false);
  });
});
