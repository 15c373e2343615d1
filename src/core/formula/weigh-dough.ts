import { weighLines } from '../speech/words/weigh.ts';
import { fill } from '../speech/fill.ts';
import { inEnglish } from '../speech/tongue.ts';
import type { Grams } from '../units.ts';
import type { Amounts } from './amounts.ts';
import type { WeighLine, WeighList } from './recipe.ts';
import { roundForScale, scaleDivision } from './round-for-scale.ts';

/**
 * The dough's lines for the scale, rounded together so that their sum, `dough`, is within half the
 * coarsest division of the exact dough. `first`: each flour less its part in the levain, first
 * water, levain. `second`: salt, second water. `filling`: each filling, behind it the water that it
 * soaks in. A line of nothing is left out; salt always stays, so that the second list is never empty.
 * `scale`: the steps the kitchen's scale shows, g, where that is known.
 * Failure: none; the amounts must be 0 or more.
 */
export function weighDough(
  exact: Amounts,
  scale: Grams | null = null,
): {
  readonly lines: Readonly<Record<Exclude<WeighList, 'feed'>, readonly WeighLine[]>>;
  readonly dough: Grams;
} {
  type Line = WeighLine & { readonly list: Exclude<WeighList, 'feed'> };
  const line = (list: Line['list'], item: string, name: string, grams: Grams): Line => {
    return {
      list,
      item,
      name,
      grams,
      division: scaleDivision(grams, item === 'salt' ? 'salt' : 'other', scale),
    };
  };
  const lines = [
    ...exact.flours.map(({ id, name, grams }) => line('first', `flour:${id}`, name, grams)),
    line('first', 'water', 'water', exact.firstWater),
    line('first', 'levain', 'levain', exact.levain),
    line('second', 'salt', 'salt', exact.salt),
    line('second', 'secondWater', 'second water', exact.secondWater),
    ...exact.fillings.flatMap(({ id, name, grams }) => [
      line('filling', `filling:${id}`, name, grams),
      ...exact.soakers
        .filter((soaker) => soaker.id === id)
        .map((water) =>
          line(
            'filling',
            `soak:${id}`,
            // What is kept stays English: tell-line.ts tells it.
            inEnglish(() => fill(weighLines.soakerWater, { name })),
            water.grams,
          ),
        ),
    ]),
  ].filter(({ grams, item }) => grams > 1e-9 || item === 'salt');
  const rounded = roundForScale(lines, exact.dough, 'one');
  const of = (list: Line['list']): WeighLine[] =>
    lines.flatMap(({ list: own, item, name, division }, i) =>
      own === list ? [{ item, name, grams: rounded[i] ?? 0, division }] : [],
    );
  const tenths = rounded.reduce((sum, grams) => sum + Math.round(grams * 10), 0);
  return {
    lines: { first: of('first'), second: of('second'), filling: of('filling') },
    dough: tenths / 10,
  };
}
