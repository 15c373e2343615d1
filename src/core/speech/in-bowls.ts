import { BOWL_MINUTES, doughIn, type Bowl } from '../kitchen/split-bowls.ts';
import type { Grams, Units } from '../units.ts';
import { bowlClock, bowlShares, bowlWeigh } from './words/bowls.ts';
import { said, shown } from './facts.ts';
import { fill } from './fill.ts';
import { sayNumber } from './numbers.ts';
import { showWeight } from './weights.ts';

/** More than so many weights in a row are told in two heaps. */
const IN_A_ROW = 3;

/**
 * One line's shares, bowl by bowl where they differ; of many bowls, how many take how much.
 *
 * @example showShares([725, 725], METRIC) // '2 × 725 g'
 * @example showShares([725, 726], METRIC) // '725 g + 726 g'
 */
export function showShares(shares: readonly Grams[], units: Units): string {
  const told = shares.map((grams) => showWeight(grams, units));
  const kinds = [...new Set(told)];
  if (told.length === 1) return told[0]!;
  if (kinds.length > 1 && told.length <= IN_A_ROW) return told.join(' + ');
  return kinds.map((kind) => `${told.filter((one) => one === kind).length} × ${kind}`).join(' + ');
}

/**
 * One line's shares as they are said: what each bowl takes, and which of few take a step of the scale more.
 *
 * @example sayShares([725, 726], 'salt', METRIC) // '… of salt. In each of two bowls. Put one gram more in bowl 2.'
 */
export function sayShares(shares: readonly Grams[], name: string, units: Units): string {
  const least = Math.min(...shares);
  const more = shares.flatMap((grams, i) => (grams > least ? [{ bowl: i + 1, grams }] : []));
  const grams = more.length === 0 ? 0 : Math.round((more[0]!.grams - least) * 10) / 10;
  const alike = new Set(shares.map((one) => showWeight(one, units))).size === 1;
  const each = fill(bowlWeigh.spoken, {
    bowls: sayNumber(shares.length, null),
    ...said({ grams: least, name }, units),
  });
  const rest =
    alike || shares.length > IN_A_ROW
      ? []
      : more.map(({ bowl }) => fill(bowlWeigh.more, { bowl, ...said({ grams }, units) }));
  return [each, ...rest].join(' ');
}

/** '2 bowls, 2450 g each.': how a dough is shared. Empty where one bowl takes it. */
export function tellShares(bowls: readonly Bowl[], units: Units): string {
  if (bowls.length < 2) return '';
  const doughs = bowls.map(doughIn);
  const mean = doughs.reduce((sum, grams) => sum + grams, 0) / doughs.length;
  const isAlike = new Set(doughs.map((grams) => showWeight(grams, units))).size === 1;
  return fill(isAlike ? bowlShares.each : bowlShares.about, {
    bowls: bowls.length,
    ...shown({ grams: Math.round(mean) }, units),
  });
}

/**
 * How much later than the first the second bowl is and, of more, the last: 'Bowl 2: 6 min later.', for eyes
 * and for ears. `time`: when a bowl comes, by its place from 0, as the baker's clock shows it, where the
 * first one's hour is known. Null where one bowl takes it.
 */
export function tellClocks(
  count: number,
  time: ((bowl: number) => string) | null = null,
): { readonly shown: string; readonly said: string } | null {
  if (count < 2) return null;
  const others = [...new Set([1, count - 1])].map((at) => {
    const bowl = at + 1;
    const minutes = at * BOWL_MINUTES;
    return {
      shown: time
        ? fill(bowlClock.at, { bowl, ...shown({ minutes, time: time(at) }) })
        : fill(bowlClock.later, { bowl, ...shown({ minutes }) }),
      said: fill(bowlClock.later, { bowl, ...said({ minutes }) }),
    };
  });
  return {
    shown: others.map((one) => one.shown).join(' '),
    said: others.map((one) => one.said).join(' '),
  };
}
