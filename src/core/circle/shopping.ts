import type { Grams } from '../units.ts';
import type { Ingredient } from './circle.ts';
import { asBought, type There } from './stock.ts';
import { usesTogether, type Use } from './uses.ts';

/** One ingredient that is wanted. Grams are as bought. */
export interface ShoppingLine {
  readonly id: string;
  readonly name: string;
  readonly needed: Grams;
  readonly there: There;
  /** All of what is needed where nobody knows what is there. */
  readonly lacking: Grams;
  /** Whole packs that hold what lacks; null: no pack is known. */
  readonly packs: number | null;
}

/** A hair over a whole pack is no pack more. */
const HAIR = 1e-6;

/**
 * Whole packs that hold so much, g.
 *
 * @param pack g, over 0
 * @example
 * packsFor(1001, 500) // → 3
 */
export const packsFor = (grams: Grams, pack: Grams): number =>
  Math.max(0, Math.ceil(grams / pack - HAIR));

/**
 * What batches need of each ingredient, what of it should be there and what lacks, rounded up to packs
 * where the pack is known. An ingredient that nobody has counted lacks all of it, and says why.
 * What there is enough of is in it too, lacking nothing.
 */
export function shoppingFor(
  uses: Iterable<Use>,
  ingredients: readonly Ingredient[],
  stock: (id: string) => There,
): readonly ShoppingLine[] {
  const known = new Map(ingredients.map((one) => [one.id, one]));
  return usesTogether(uses).map(({ id, name, grams }) => {
    const one = known.get(id);
    const there = stock(id);
    const needed = asBought(grams, one?.pack?.usable ?? 1);
    const lacking = Math.max(0, needed - (there.grams ?? 0));
    return {
      id,
      name: one?.name ?? name,
      needed,
      there,
      lacking,
      packs: one?.pack ? packsFor(lacking, one.pack.grams) : null,
    };
  });
}

/** Whether it stands on the list that is taken along. */
export const isToBuy = ({ lacking }: ShoppingLine): boolean => lacking > HAIR;
