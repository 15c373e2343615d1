import { weighedAmounts } from '../../core/formula/mixed-amounts.ts';
import { countedPct } from '../../core/formula/filling-basis.ts';
import type { Formula } from '../../core/formula/formula.ts';
import { fromBowl, toBowl, type Percent } from '../../core/formula/in-bowl-percent.ts';
import {
  withCounted,
  withPercent,
  type Changed,
  type PercentLine,
} from '../../core/formula/live-percent.ts';
import { relevain } from '../../core/formula/relevain.ts';
import type { Grams } from '../../core/units.ts';

/** A line of a formula: one that has a percent of flour, or of another thing. */
export type LineKey = PercentLine | 'secondWater' | 'levainWater';

/**
 * A line as it is read in the formula's own convention: its percent, and what that is for one dough.
 * `grams` null: it is no weight (the levain's own wetness). `least` and `most`: what can be keyed.
 */
export interface Line {
  readonly key: LineKey;
  readonly percent: number;
  readonly grams: Grams | null;
  /** A filling that is counted of the dough, before the fillings go in. */
  readonly ofDough: boolean;
  readonly least: number;
  readonly most: number;
}

export const isBowl = ({ convention }: Pick<Formula, 'convention'>): boolean =>
  convention === 'bowl';

const idOf = (key: LineKey): string => key.slice(key.indexOf(':') + 1);
/** Fillings that are counted of the dough are so in either convention. */
const ofDough = (formula: Formula, key: LineKey): boolean =>
  key.startsWith('filling:') && formula.fillingsOf === 'dough';

/** The lines of a formula for a dough of so many grams, in the order they are read. */
export function linesOf(formula: Formula, dough: Grams): readonly Line[] {
  const exact = weighedAmounts(formula, dough);
  const bowl = isBowl(formula);
  const sheet = toBowl(formula);
  const { totalFlour, levain } = exact;
  const only = formula.flours.length === 1;
  const line = (
    key: LineKey,
    percent: number,
    grams: Grams | null,
    least: number,
    most: number,
  ) => {
    return { key, percent, grams, ofDough: ofDough(formula, key), least, most };
  };
  return [
    ...formula.flours.map(({ id, pct }, i) =>
      line(
        `flour:${id}`,
        bowl ? sheet.flours[i]!.pct : pct,
        bowl ? exact.flours[i]!.grams : (pct * totalFlour) / 100,
        only ? 100 : 0.1,
        only ? 100 : 99.9,
      ),
    ),
    line(
      'water',
      bowl ? sheet.water : formula.hydration,
      bowl ? exact.finalWater : (formula.hydration * totalFlour) / 100,
      20,
      200,
    ),
    line('secondWater', formula.secondWater * 100, exact.secondWater, 0, 50),
    line('levain', bowl ? sheet.levain : (100 * levain) / totalFlour, levain, 0.5, 150),
    line('levainWater', formula.levain.hydration * 100, null, 40, 200),
    line('salt', bowl ? sheet.salt : formula.salt, exact.salt, 0, 10),
    ...formula.fillings.map(({ id, pct }, i) => {
      const key = `filling:${id}` as const;
      const counted = ofDough(formula, key)
        ? countedPct(formula, pct)
        : bowl
          ? sheet.fillings[i]!.pct
          : pct;
      return line(key, counted, exact.fillings[i]!.grams, 0.1, 100);
    }),
  ];
}

const put = (list: readonly Percent[], id: string, pct: number): Percent[] =>
  list.map((one) => (one.id === id ? { ...one, pct } : one));

/** Flours of the bowl are 100 together: the others take up what one of them gains. */
const putFlour = (flours: readonly Percent[], id: string, pct: number): Percent[] => {
  const others = flours.reduce((sum, one) => sum + (one.id === id ? 0 : one.pct), 0);
  return flours.map((one) => ({
    ...one,
    pct: one.id === id ? pct : others > 0 ? (one.pct * (100 - pct)) / others : one.pct,
  }));
};

/**
 * The formula with one line at another percent of its own convention; the others keep theirs.
 * No answer, with a reason, where there is no such dough.
 */
export function withLine(formula: Formula, key: LineKey, percent: number): Changed {
  if (key === 'secondWater') return { formula: { ...formula, secondWater: percent / 100 } };
  if (key === 'levainWater') {
    const made = relevain(formula, percent / 100);
    return made.formula === null ? made : { formula: made.formula };
  }
  if (ofDough(formula, key)) return withCounted(formula, idOf(key), percent);
  if (!isBowl(formula)) return withPercent(formula, key, percent);
  const sheet = toBowl(formula);
  return fromBowl(
    formula,
    key === 'water' || key === 'salt' || key === 'levain'
      ? { ...sheet, [key]: percent }
      : key.startsWith('flour:')
        ? { ...sheet, flours: putFlour(sheet.flours, idOf(key), percent) }
        : { ...sheet, fillings: put(sheet.fillings, idOf(key), percent) },
  );
}

/** Nearer than any scale shows, %. */
const NEAR = 1e-9;
/** A tenth of a gram more or less is the scale's own, g. */
const TENTH = 0.1;

/**
 * The percent at which a line weighs so many grams in a dough of that weight, the dough staying as heavy
 * as it is; null where none that can be keyed does.
 */
export function percentFor(
  formula: Formula,
  key: LineKey,
  grams: Grams,
  dough: Grams,
): number | null {
  const find = (of: Formula): Line => linesOf(of, dough).find((one) => one.key === key)!;
  const { least, most, percent: now, grams: weighed } = find(formula);
  if (weighed === null) return null;
  /** What no formula can be is lighter or heavier than any, as it lies below or above what is. */
  const weighs = (percent: number): Grams => {
    const { formula: other } = withLine(formula, key, percent);
    if (other !== null) return find(other).grams!;
    return percent < now ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  };
  let [low, high] = [least, most];
  while (high - low > NEAR) {
    const middle = (low + high) / 2;
    if (weighs(middle) < grams) low = middle;
    else high = middle;
  }
  return Math.abs(weighs(high) - grams) <= TENTH ? high : null;
}
