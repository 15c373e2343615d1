import { describe, expect, it } from 'vitest';
import { batchesOf, type Batch } from '../../../src/core/circle/batches.ts';
import type { OrderLine } from '../../../src/core/circle/circle.ts';
import { FILLING_FACTS, FILLING_KINDS } from '../../../src/core/formula/filling-facts.ts';
import {
  dayDraftOf,
  isRuled,
  laidOf,
  layNotes,
} from '../../../src/screens/circle/dough/lay-day.ts';
import { bread } from '../day/breads.ts';

const FORMULAS = ['lane-wheat', 'cherry-hazelnut', 'cheese-seed', 'harbour-rye'].map(bread);
const line = (of: string, count: number, grams: number | null = null): OrderLine => {
  return { bread: of, count, grams, cut: false };
};
const batched = (...orders: { at: number | null; lines: OrderLine[] }[]): readonly Batch[] =>
  batchesOf(orders, { formulas: FORMULAS, weighIns: [], scale: null }).batches;
const ids = (batches: readonly Batch[]) => batches.map(({ formula }) => formula.id);

describe('a day’s bread as the Day is asked for it', () => {
  it('has each batch a bake of its piece, due at its earliest hour, and nothing measured', () => {
    const batches = batched(
      { at: 600, lines: [line('lane-wheat', 8, 700)] },
      { at: 540, lines: [line('lane-wheat', 1, 700)] },
      { at: null, lines: [line('cherry-hazelnut', 2)] },
    );
    expect(dayDraftOf(batches, (minute) => 1e12 + minute)).toEqual({
      bakes: [
        { formula: 'lane-wheat', loaves: 9, piece: 805, due: 1e12 + 540, pins: {} },
        { formula: 'cherry-hazelnut', loaves: 2, due: null, pins: {} },
      ],
      kitchen: null,
      away: [],
      taken: [],
    });
  });

  it('tells what the Day has no room for: what is fetched last, or at no hour', () => {
    const batches = batched(
      { at: null, lines: [line('lane-wheat', 1)] },
      { at: 900, lines: [line('cherry-hazelnut', 1)] },
      { at: 540, lines: [line('cheese-seed', 1)] },
      { at: 600, lines: [line('harbour-rye', 1)] },
    );
    const { laid, left } = laidOf(batches);
    expect(ids(laid)).toEqual(['cherry-hazelnut', 'cheese-seed', 'harbour-rye']);
    expect(ids(left)).toEqual(['lane-wheat']);
    expect(layNotes(batches, false)[0]).toEqual({ kind: 'many', most: 3, left });
    expect(dayDraftOf(batches, (minute) => minute).bakes).toHaveLength(3);
    expect(layNotes(laid, false).map(({ kind }) => kind)).not.toContain('many');
  });

  it('asks of a plan that stands, and of each filling with rules of its own once', () => {
    const cheese = [line('cheese-seed', 2), line('cheese-seed', 2, 500)];
    const notes = layNotes(batched({ at: null, lines: cheese }), true);
    const [filling] = bread('cheese-seed').fillings.filter(({ keeps }) => keeps === 'hardCheese');
    expect(notes).toEqual([{ kind: 'stands' }, { kind: 'rules', filling: filling!.name }]);
    expect(layNotes(batched({ at: null, lines: [line('cherry-hazelnut', 1)] }), false)).toEqual([]);
  });

  it('asks of cheese, meat, egg, cooked vegetables and fresh herbs, not of what keeps on a shelf', () => {
    const asked = FILLING_KINDS.filter((kind) => isRuled(FILLING_FACTS[kind]));
    expect(asked).toEqual([
      'brinedOlives',
      'inOil',
      'freshHerbs',
      'hardCheese',
      'freshCheese',
      'roastVegetables',
      'cookedPotato',
      'rawOnion',
      'cookedGrain',
      'curedMeat',
      'cookedEgg',
      'freshFruit',
    ]);
    const packet = (allergens: string[]) => isRuled({ keeps: 'shelf', allergens });
    expect(packet(['fish'])).toBe(true);
    expect(packet(['milk'])).toBe(true);
    expect(packet(['milk, if the packet says so', 'tree nuts (walnut)'])).toBe(false);
  });
});
