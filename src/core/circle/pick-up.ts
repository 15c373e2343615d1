import { byLetters } from '../speech/measures.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import type { Grams } from '../units.ts';
import type { Neighbour, Order } from './circle.ts';

/** One order, and who comes for it; `name` null: nobody is known by its id any more. */
export interface PickUp {
  readonly order: Order;
  readonly name: string | null;
  /** What they must not eat. */
  readonly watch: readonly string[];
}

/** All that is fetched at one hour; `at` null: at any time. */
export interface PickHour {
  readonly at: MinuteOfDay | null;
  readonly of: readonly PickUp[];
}

/** Loaves of one bread, and of one weight where that was said. */
export interface HandTotal {
  /** Its formula's id. */
  readonly bread: string;
  readonly grams: Grams | null;
  readonly count: number;
  readonly cut: number;
  readonly handed: number;
}

export interface PickList {
  readonly hours: readonly PickHour[];
  readonly totals: readonly HandTotal[];
  readonly loaves: number;
  readonly handed: number;
  /** Whose bread is still here, in the order they come. */
  readonly toCome: readonly PickUp[];
}

/** By its letters as people read them: 'b' after 'A', 'K 10' after 'K 9'; without a name last. */

const compared = (a: PickUp, b: PickUp): number =>
  (a.order.at ?? Infinity) - (b.order.at ?? Infinity) ||
  Number(a.name === null) - Number(b.name === null) ||
  byLetters(a.name ?? '', b.name ?? '') ||
  a.order.made - b.order.made;

const loavesOf = ({ lines }: Order): number => lines.reduce((sum, { count }) => sum + count, 0);

function totalsOf(pickUps: readonly PickUp[]): readonly HandTotal[] {
  const totals = new Map<string, HandTotal>();
  for (const { order } of pickUps)
    for (const { bread, grams, count, cut } of order.lines) {
      const key = `${bread}\n${grams}`;
      const old = totals.get(key) ?? { bread, grams, count: 0, cut: 0, handed: 0 };
      totals.set(key, {
        ...old,
        count: old.count + count,
        cut: old.cut + (cut ? count : 0),
        handed: old.handed + (order.handed === null ? 0 : count),
      });
    }
  const breads = [...new Set([...totals.values()].map(({ bread }) => bread))];
  return [...totals.values()].toSorted(
    (a, b) => breads.indexOf(a.bread) - breads.indexOf(b.bread) || (a.grams ?? 0) - (b.grams ?? 0),
  );
}

/**
 * The orders of one day in the order they are fetched: by hour, then by name; those without an hour last.
 * One that holds no loaf is left out. Totals stand in the order in which their breads first come, those of a weight last.
 *
 * @example
 * pickUps([], []).loaves // → 0
 */
export function pickUps(orders: readonly Order[], neighbours: readonly Neighbour[]): PickList {
  const all = orders
    .filter((order) => loavesOf(order) > 0)
    .map((order): PickUp => {
      const who = neighbours.find(({ id }) => id === order.who);
      return { order, name: who?.name ?? null, watch: who?.watch ?? [] };
    })
    .toSorted(compared);
  const hours = new Map<MinuteOfDay | null, PickUp[]>();
  for (const one of all) hours.set(one.order.at, [...(hours.get(one.order.at) ?? []), one]);
  const sum = (of: readonly PickUp[]): number =>
    of.reduce((loaves, { order }) => loaves + loavesOf(order), 0);
  const toCome = all.filter(({ order }) => order.handed === null);
  return {
    hours: [...hours].map(([at, of]) => ({ at, of })),
    totals: totalsOf(all),
    loaves: sum(all),
    handed: sum(all) - sum(toCome),
    toCome,
  };
}
