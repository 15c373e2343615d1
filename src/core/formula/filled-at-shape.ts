import type { Grams } from '../units.ts';
import { goesIn } from './goes-in.ts';
import type { Recipe, WeighLine } from './recipe.ts';
import { hasSheet } from './touches.ts';

type Of = Pick<Recipe, 'dough' | 'lines' | 'loaves' | 'piece' | 'process'>;

/** The filling goes in as the loaves are shaped: no sheet took it in before. */
export const fillsAtShape = ({ lines, process }: Of): boolean =>
  lines.filling.length > 0 && !hasSheet(process.touches);

/**
 * What one piece weighs where the dough is divided, g: without its filling where that goes in later,
 * or the last piece would come out short. Source: arithmetic.
 *
 * @example
 * dividedPiece({ dough: 1800, loaves: 2, piece: 900, process: { touches: [] }, lines: { filling: [{ item: 'filling:fig', name: 'figs', grams: 300, division: 1 }] } }) // → 750
 */
export function dividedPiece(recipe: Of): Grams {
  if (!fillsAtShape(recipe) || recipe.process.shaping === 'scoop') return recipe.piece;
  const filling = recipe.lines.filling.reduce((sum, { grams }) => sum + grams, 0);
  return Math.round(recipe.piece - filling / recipe.loaves);
}

/** Each filling's share of one loaf, to the gram. */
export const fillingEach = ({ lines, loaves }: Of): readonly WeighLine[] =>
  goesIn(lines.filling).map((line) => ({
    ...line,
    grams: Math.round(line.grams / loaves),
    division: 1,
  }));
