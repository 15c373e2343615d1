import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import type { DayDraft } from '../../../src/screens/day-draft.ts';
import { askOf, draftOf, EMPTY_DAY, withBake } from '../../../src/screens/day/draft.ts';
import { bread } from './breads.ts';
import { SATURDAY_NOON, THURSDAY } from './saturday.ts';

const wheat = bread('lane-wheat');
const bake = { formula: wheat.id, loaves: 8, piece: 805, due: SATURDAY_NOON, pins: { mix: 1 } };
const draft: DayDraft = { ...EMPTY_DAY, kitchen: 22, bakes: [bake] };
const asked = (of: DayDraft) =>
  askOf(of, {
    formulas: [wheat, bread('cherry-hazelnut')],
    equipment: EQUIPMENT,
    belief: { mean: 0, sd: 0.3 },
    now: THURSDAY,
    units: { heat: 'C', weight: 'g' },
  });

describe('a piece that is asked for', () => {
  it('is the one the recipe is made of, and comes back when the plan is asked anew', () => {
    const { ask } = asked(draft);
    const { lines } = makeRecipe(wheat, { loaves: 8, piece: 805, scale: EQUIPMENT.scale }).recipe!;
    expect(ask!.bakes[0]!.recipe).toMatchObject({ loaves: 8, piece: 805, lines });
    expect(draftOf({ ask: ask! })).toEqual(draft);
  });

  it('is left out where it is the formula’s own', () => {
    const { piece: _, ...own } = bake;
    const { ask } = asked({ ...draft, bakes: [own] });
    expect(ask!.bakes[0]!.recipe.piece).toBe(wheat.piece);
    expect(draftOf({ ask: ask! }).bakes[0]).not.toHaveProperty('piece');
  });

  it('goes with its bread, and stays where anything else changes', () => {
    expect(withBake(draft, 0, { loaves: 6 }).bakes).toEqual([{ ...bake, loaves: 6, pins: {} }]);
    expect(withBake(draft, 0, { formula: wheat.id }).bakes[0]!.piece).toBe(805);
    expect(withBake(draft, 0, { formula: 'cherry-hazelnut' }).bakes[0]).not.toHaveProperty('piece');
  });
});
