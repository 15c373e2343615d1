import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isToBuy, packsFor, shoppingFor } from '../../../src/core/circle/shopping.ts';
import { stockOf } from '../../../src/core/circle/stock.ts';
import { FROM, ingredient } from './support.ts';

const use = (name: string, grams: number) => ({ id: name.toLowerCase(), name, grams });

describe('what is to be bought', () => {
  it('is what lacks, in whole packs; what nobody counted lacks all of it and says so', () => {
    const ingredients = [
      ingredient('Rye', {
        pack: { grams: 1000, cost: 2, usable: 1 },
        counted: { grams: 300, at: FROM },
      }),
      ingredient('Salt', { counted: { grams: 500, at: FROM } }),
    ];
    const lines = shoppingFor(
      [use('Rye', 900), use('Salt', 40), use('Walnuts', 120), use('rye', 500)],
      ingredients,
      stockOf(ingredients, []),
    );
    expect(lines.map(({ id, needed, lacking, packs }) => [id, needed, lacking, packs])).toEqual([
      ['rye', 1400, 1100, 2],
      ['salt', 40, 0, null],
      ['walnuts', 120, 120, null],
    ]);
    expect(lines.map(({ there }) => there.why)).toEqual([null, null, 'notCounted']);
    expect(lines.filter(isToBuy).map(({ id }) => id)).toEqual(['rye', 'walnuts']);
  });

  it('is bought with what cannot be used of it', () => {
    const olives = ingredient('Olives', { pack: { grams: 400, cost: 4, usable: 0.75 } });
    const [line] = shoppingFor([use('Olives', 600)], [olives], stockOf([olives], []));
    expect(line).toMatchObject({ needed: 800, lacking: 800, packs: 2 });
  });

  it('holds what lacks, and with one pack fewer it would not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200_000 }),
        fc.integer({ min: 1, max: 25_000 }),
        (tenths, pack) => {
          const packs = packsFor(tenths / 10, pack);
          expect(packs * pack).toBeGreaterThanOrEqual(tenths / 10 - 1e-3 * pack);
          expect((packs - 1) * pack).toBeLessThan(Math.max(tenths / 10, 1e-9));
          expect(Object.is(packs, -0)).toBe(false);
        },
      ),
    );
    expect(packsFor(0.1 + 0.2, 0.3)).toBe(1);
  });
});
