import { roundForScale } from '../formula/round-for-scale.ts';
import type { Recipe, WeighLine } from '../formula/recipe.ts';
import { MINUTE, type Grams, type Instant, type Minutes } from '../units.ts';
import { bowlsFor } from './bowls.ts';
import type { Equipment } from './equipment.ts';

/** Minutes from one bowl's mix to the next. Common practice, no source. */
export const BOWL_MINUTES: Minutes = 6;

/** One bowl of a dough that is shared: its own lines, and how much later than the first it is mixed. */
export interface Bowl {
  readonly lines: readonly WeighLine[];
  readonly later: Minutes;
}

/**
 * A dough's lines shared evenly between `count` bowls, mixed one after the other, `each` minutes
 * apart. Of every line the bowls have as much, to one step of the scale, and together what it was;
 * bowls that have a step more of one line have it less of another where that can be.
 * Source: largest remainder, as every line. `count` whole, 1 or more.
 */
export function splitBowls(
  lines: readonly WeighLine[],
  count: number,
  each: Minutes = BOWL_MINUTES,
): readonly Bowl[] {
  // What a bowl has too much of one line, the next line's spare steps go past it.
  const behind = Array.from({ length: count }, () => 0);
  const shares = lines.map(({ grams, division }) => {
    const even = roundForScale(
      behind.map(() => ({ grams: grams / count, division })),
      grams,
    );
    const most = even.toSorted((a, b) => b - a);
    const byNeed = behind.map((has, i) => ({ i, has })).sort((a, b) => a.has - b.has || a.i - b.i);
    const own = behind.map(() => 0);
    for (const [k, { i }] of byNeed.entries()) own[i] = most[k]!;
    for (const [i, share] of own.entries()) behind[i]! += share;
    return own;
  });
  return behind.map((_, i) => ({
    lines: lines.map((line, l) => ({ ...line, grams: shares[l]![i]! })),
    later: i * each,
  }));
}

/** When each bowl's clock begins, where the first one's began at `first`. */
export const bowlClocks = (
  first: Instant,
  bowls: readonly Pick<Bowl, 'later'>[],
): readonly Instant[] => bowls.map(({ later }) => first + later * MINUTE);

/**
 * A recipe's dough in as many of this kitchen's bowls as it wants: all that is weighed but the feed,
 * which is one jar. Where one bowl takes it, that one has all of it.
 */
export const recipeBowls = (
  { lines, dough }: Pick<Recipe, 'lines' | 'dough'>,
  { bowls }: Pick<Equipment, 'bowls'>,
): readonly Bowl[] =>
  splitBowls([...lines.first, ...lines.second, ...lines.filling], bowlsFor(dough, bowls));

/** What each bowl takes of one line, by its item, g; what no bowl has is nothing. */
export const sharesOf = (bowls: readonly Pick<Bowl, 'lines'>[], item: string): readonly Grams[] =>
  bowls.map(({ lines }) => lines.find((line) => line.item === item)?.grams ?? 0);

/** Dough in one bowl, g, in whole tenths. */
export const doughIn = ({ lines }: Pick<Bowl, 'lines'>): Grams =>
  lines.reduce((sum, { grams }) => sum + Math.round(grams * 10), 0) / 10;
