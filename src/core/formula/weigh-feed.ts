import type { Grams } from '../units.ts';
import type { Formula } from './formula.ts';
import { levainFeed } from './levain-feed.ts';
import { levainShares } from './levain-shares.ts';
import { levainToMake } from './levain-to-make.ts';
import type { WeighLine } from './recipe.ts';
import { roundForScale, scaleDivision } from './round-for-scale.ts';

/**
 * The levain's lines for the scale: starter (`seed`, to 0.1 g), each flour of the levain, water.
 * Makes `needed` grams for the dough and `keepBack` to keep, with 5 % for jar and spoon.
 * `scale`: the steps the kitchen's scale shows, g, where that is known.
 * Failure: none; `needed` must be 0 or more.
 */
export function weighFeed(
  formula: Formula,
  needed: Grams,
  keepBack: Grams,
  scale: Grams | null = null,
): readonly WeighLine[] {
  const { levain, flours } = formula;
  const mass = levainToMake(needed, keepBack);
  const feed = levainFeed(levain, mass);
  const shares = levainShares(flours, levain);
  const lines = [
    { item: 'seed', name: 'starter', grams: feed.seed },
    ...flours.map(({ id, name }, i) => {
      return { item: `flour:${id}`, name, grams: (feed.flour * (shares[i] ?? 0)) / levain.pff };
    }),
    { item: 'water', name: 'water', grams: feed.water },
  ]
    .filter(({ grams }) => grams > 1e-9)
    .map((line) => {
      return {
        ...line,
        division: scaleDivision(line.grams, line.item === 'seed' ? 'seed' : 'other', scale),
      };
    });
  const rounded = roundForScale(lines, mass, 'one');
  return lines.map((line, i) => ({ ...line, grams: rounded[i] ?? 0 }));
}
