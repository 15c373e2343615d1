import type { WeighLine } from '../formula/recipe.ts';
import { fill } from './fill.ts';
import { showPart } from './show-part.ts';
import { inEnglish } from './tongue.ts';
import { weighLines, weighNames } from './words/weigh.ts';

const SOAK = 'soak:';

/** The filling of a soaker's line, out of its English name. Null where it is named otherwise. */
function soaked(name: string): string | null {
  const [before = '', after = ''] = inEnglish(() => weighLines.soakerWater).split('{name}');
  return name.startsWith(before) && name.endsWith(after)
    ? name.slice(before.length, name.length - after.length)
    : null;
}

/**
 * What a line of a weigh list is called in the tongue that stands. A recipe keeps the English name, so that
 * its log means the same on each tablet; a flour or a filling of a baker's own is called what the formula
 * calls it.
 *
 * @example tellLine({ item: 'secondWater', name: 'second water' }) // 'zweites Wasser' in German
 */
export function tellLine({ item, name }: Pick<WeighLine, 'item' | 'name'>): string {
  if (Object.hasOwn(weighNames, item)) return weighNames[item as keyof typeof weighNames];
  const filling = item.startsWith(SOAK) ? soaked(name) : null;
  return filling === null
    ? showPart(name)
    : fill(weighLines.soakerWater, { name: showPart(filling) });
}

/** A line with its name as `tellLine` tells it. */
export const toldLine = <L extends Pick<WeighLine, 'item' | 'name'>>(line: L): L => ({
  ...line,
  name: tellLine(line),
});
