import type { WeighLine } from './recipe.ts';

/**
 * The fillings as they go into the dough: each line with its soaker's water in it, which was weighed
 * as a line of its own and has soaked in since.
 *
 * @example
 * goesIn([{ item: 'filling:oats', name: 'oats', grams: 100, division: 1 }, { item: 'soak:oats', name: 'water for oats', grams: 120, division: 1 }]).map(({ grams }) => grams) // → [220]
 */
export function goesIn(lines: readonly WeighLine[]): readonly WeighLine[] {
  const soaked = (item: string): number =>
    lines.find((line) => line.item === item.replace(/^filling:/, 'soak:'))?.grams ?? 0;
  return lines
    .filter(({ item }) => !item.startsWith('soak:'))
    .map((line) => ({ ...line, grams: line.grams + soaked(line.item) }));
}
