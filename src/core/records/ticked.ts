import { goesIn } from '../formula/goes-in.ts';
import type { Recipe, WeighLine } from '../formula/recipe.ts';
import type { ListName, TickedList } from './stage.ts';

const TICKED: readonly ListName[] = [
  'feed',
  'first',
  'second',
  'filling',
  'worked',
] satisfies readonly TickedList[];

/** Whether a list's lines are the recipe's; the others are the same for every bread. */
export const isTicked = (list: ListName): list is TickedList => TICKED.includes(list);

/**
 * The lines of a list that are ticked one by one, in the order they come: what is weighed, or each filling
 * as it goes into the dough, by its own item whatever it is called. Fillings go in with the sheet where one
 * is laminated, else as the loaves get their shape; a bake of before they were ticked has none of them.
 */
export function tickedLines(recipe: Recipe, list: TickedList): readonly WeighLine[] {
  if (list !== 'filling' && list !== 'worked') return recipe.lines[list];
  const onSheet = recipe.process.touches.some(({ kind }) => kind === 'laminate');
  const here = onSheet === (list === 'filling');
  return here && !recipe.fillingAtOnce ? goesIn(recipe.lines.filling) : [];
}
