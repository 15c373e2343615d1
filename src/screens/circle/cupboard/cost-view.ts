import { timesCost, type BakeCost } from '../../../core/circle/cost.ts';
import type { CircleWays } from '../../../core/circle/circle.ts';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMoney, showPart, showProduct, showUnitCost } from '../../../core/speech/money.ts';
import { shown } from '../../../core/speech/facts.ts';
import { showParts } from '../../../core/speech/show-part.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { Units } from '../../../core/units.ts';
import { begun, priceWeight, storeWeight } from './words.ts';

/** One row of the sum: what, how much of it, what a kilo or pound costs, what it comes to. */
export interface CostRow {
  readonly what: string;
  readonly much: string;
  readonly unit: string;
  readonly cost: string;
  readonly isSum: boolean;
}

export interface CostView {
  /** '€1.12 a loaf', or that it is at least so much. */
  readonly told: string;
  /** What has no price yet; null: everything has one. */
  readonly missing: string | null;
  /** Over the third column. */
  readonly per: string;
  readonly rows: readonly CostRow[];
  /** The baker's own number times the cost, as a sum; null: there is no such number. */
  readonly price: string | null;
}

/** What one loaf costs, in a line. */
export function loafTold({ loaf, missing, lines }: BakeCost, currency: string): string {
  if (missing.length === lines.length) return words.unknown;
  const value = showMoney(loaf, currency);
  return fill(missing.length > 0 ? words.atLeast : words.loaf, { value });
}

/** The arithmetic of a loaf, row by row. */
export function costView(
  cost: BakeCost,
  { currency, times }: Pick<CircleWays, 'currency' | 'times'>,
  units: Units,
): CostView {
  const { lines, known, loaves, besides, loaf, missing } = cost;
  const part = (amount: number): string => showPart(amount, currency);
  const per = priceWeight(units);
  const sum = (what: string, amount: number): CostRow => {
    return { what, much: '', unit: '', cost: part(amount), isSum: true };
  };
  const price = timesCost(loaf, times);
  const product = price === null ? null : showProduct(times!, loaf, currency);
  return {
    told: loafTold(cost, currency),
    missing: missing.length > 0 ? fill(words.missing, { kinds: showParts(missing) }) : null,
    per: fill(words.per, { grams: storeWeight(per, units) }),
    rows: [
      ...lines.map(({ name, grams, perGram, cost: its }): CostRow => ({
        what: begun(name),
        much: showWeight(grams, units),
        unit: perGram === null ? words.noPrice : showUnitCost(perGram * per, currency),
        cost: its === null ? words.none : part(its),
        isSum: false,
      })),
      sum(fill(words.bake, shown({ loaves })), known),
      sum(words.each, known / loaves),
      ...(besides === null ? [] : [sum(words.besides, besides), sum(words.withIt, loaf)]),
    ],
    price:
      product &&
      fill(missing.length > 0 ? words.priceAtLeast : words.price, {
        count: product.times,
        value: product.cost,
        sum: product.result,
      }),
  };
}
