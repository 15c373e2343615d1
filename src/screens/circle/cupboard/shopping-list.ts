import { batchesOf } from '../../../core/circle/batches.ts';
import { dayAfter, type DayKey } from '../../../core/circle/day-key.ts';
import { daysAhead, type BakeDay } from '../../../core/circle/orders.ts';
import { shoppingFor, type ShoppingLine } from '../../../core/circle/shopping.ts';
import { stillToBake } from '../../../core/circle/still-to-bake.ts';
import { usesOf } from '../../../core/circle/uses.ts';
import { weighInsOf } from '../../../../machines/kitchen/weigh-ins.ts';
import type { Store } from './store.ts';

/** So far ahead flour is bought for the circle, days. Judgement: it keeps longer, but orders change. */
const AHEAD = 14;

/** What is to be bought, and for how many loaves. */
export interface ShoppingList {
  readonly lines: readonly ShoppingLine[];
  readonly loaves: number;
  /** Loaves of bakes that run: what they take is off the counts already. */
  readonly begun: number;
  /** Loaves that were ordered and cannot be weighed; what they take is not in the list. */
  readonly left: number;
}

/** The days that bread is ordered for, of the next two weeks. */
export const shoppingDays = (
  { circle }: Pick<Store, 'circle'>,
  today: DayKey,
): readonly BakeDay[] =>
  daysAhead(circle.circle(), today, AHEAD).filter(({ day }) => day <= dayAfter(today, AHEAD - 1));

/** Loaves of the bakes that run, by their formula. */
function making({ house }: Pick<Store, 'house'>): Readonly<Record<string, number>> {
  const loaves: Record<string, number> = {};
  for (const { context } of Object.values(house.kitchen().bakes)) {
    const { id } = context.recipe.formula;
    loaves[id] = (loaves[id] ?? 0) + context.loaves.length;
  }
  return loaves;
}

/** What lacks for the orders of one day, or of all of these. What is in the making is for the first of them. */
export function shoppingList(
  store: Store,
  days: readonly BakeDay[],
  only: DayKey | null,
): ShoppingList {
  const { house, circle } = store;
  const world = {
    formulas: store.formulas(),
    weighIns: weighInsOf(house.kitchen()),
    scale: house.equipment().scale,
  };
  const isMeant = ({ day }: BakeDay): boolean => only === null || day === only;
  const still = stillToBake(days, making(store)).filter(isMeant);
  const each = still.map(({ orders }) => batchesOf(orders, world));
  const batches = each.flatMap((one) => one.batches);
  const troubles = each.flatMap((one) => one.troubles);
  const loavesIn = (all: readonly { readonly loaves: number }[]): number =>
    all.reduce((sum, { loaves }) => sum + loaves, 0);
  const loaves = loavesIn(batches);
  const left = loavesIn(troubles);
  return {
    lines: shoppingFor(
      batches.flatMap(({ recipe }) => usesOf(recipe)),
      circle.circle().ingredients,
      (id) => store.there(id),
    ),
    loaves,
    begun: loavesOrdered(days.filter(isMeant)) - loavesOrdered(still),
    left,
  };
}

const loavesOrdered = (days: readonly Pick<BakeDay, 'orders'>[]): number =>
  days
    .flatMap(({ orders }) => orders)
    .filter(({ handed }) => handed === null)
    .flatMap(({ lines }) => lines)
    .reduce((sum, { count }) => sum + count, 0);
