import type { Grams } from '../units.ts';
import type { Circle, Order, OrderLine, Standing } from './circle.ts';
import { dayAfter, weekdayOf, type DayKey } from './day-key.ts';

/** The id of a standing order's order of one day, written or not. */
export const standingOrderId = (standing: string, day: DayKey): string => `${standing}@${day}`;

/** Whether a standing order is on a day: its weekday, in its time, not left out. */
export const standsOn = (one: Standing, day: DayKey, weekday = weekdayOf(day)): boolean =>
  one.weekday === weekday &&
  one.from <= day &&
  (one.until === null || day <= one.until) &&
  !one.skips.includes(day);

/** A standing order as its order of a day, which nobody has written: `made` is 0. */
export const orderOfStanding = ({ id, who, at, lines }: Standing, day: DayKey): Order => ({
  id: standingOrderId(id, day),
  who,
  day,
  at,
  lines,
  paid: false,
  handed: null,
  made: 0,
  standing: id,
});

const namesOf = ({ neighbours }: Circle): ReadonlyMap<string, string> =>
  new Map(neighbours.map(({ id, name }) => [id, name.toLowerCase()]));

/** By the hour they are fetched, those without one last; within an hour by name, then as written. */
const inTurn = (orders: readonly Order[], names: ReadonlyMap<string, string>): readonly Order[] =>
  orders.toSorted((a, b) => {
    if (a.at !== b.at) return (a.at ?? Infinity) - (b.at ?? Infinity);
    const [one = '', other = ''] = [names.get(a.who), names.get(b.who)];
    return one < other ? -1 : one > other ? 1 : 0;
  });

const onDay = (
  written: readonly Order[],
  standing: readonly Standing[],
  day: DayKey,
): readonly Order[] => {
  const has = new Set(written.map((order) => order.standing));
  const weekday = weekdayOf(day);
  const fresh = standing.filter((one) => !has.has(one.id) && standsOn(one, day, weekday));
  return [...written, ...fresh.map((one) => orderOfStanding(one, day))];
};

/**
 * All orders of a day, those of standing orders too: each once, and not where its order of that day is
 * written. By the hour they are fetched (nobody said: last), then by name. To write one that came of a
 * standing order put it as it is, under its own id, with `made` of the press.
 */
export const ordersOn = (circle: Circle, day: DayKey): readonly Order[] =>
  inTurn(
    onDay(
      circle.orders.filter((order) => order.day === day),
      circle.standing,
      day,
    ),
    namesOf(circle),
  );

/** So many of one bread; `sizes`: how many of each weight of a cool loaf, null as its piece comes out. */
export interface BreadTotal {
  readonly bread: string;
  readonly count: number;
  /** As their pieces come out first, then from light to heavy. */
  readonly sizes: readonly { readonly grams: Grams | null; readonly count: number }[];
}

/**
 * What all of some orders come to, breads in the order in which they first come.
 *
 * @example
 * totalsOf([{ lines: [{ bread: 'a', count: 2, grams: null, cut: false }] }]) // → [{ bread: 'a', count: 2, sizes: [{ grams: null, count: 2 }] }]
 */
export function totalsOf(
  orders: readonly { readonly lines: readonly OrderLine[] }[],
): readonly BreadTotal[] {
  const breads = new Map<string, Map<Grams | null, number>>();
  for (const { bread, grams, count } of orders.flatMap(({ lines }) => lines)) {
    const sizes = breads.get(bread) ?? new Map<Grams | null, number>();
    breads.set(bread, sizes.set(grams, (sizes.get(grams) ?? 0) + count));
  }
  return [...breads].map(([bread, sizes]) => ({
    bread,
    count: [...sizes.values()].reduce((sum, n) => sum + n, 0),
    sizes: [...sizes]
      .map(([grams, count]) => ({ grams, count }))
      .toSorted((a, b) => (a.grams ?? 0) - (b.grams ?? 0)),
  }));
}

/** One day that bread is fetched. */
export interface BakeDay {
  readonly day: DayKey;
  readonly orders: readonly Order[];
  readonly loaves: number;
  readonly totals: readonly BreadTotal[];
}

/** Standing orders are looked ahead so many days: a year and a bit. Judgement. */
const AHEAD = 400;

const bakeDay = (day: DayKey, orders: readonly Order[]): BakeDay => {
  const totals = totalsOf(orders);
  return { day, orders, totals, loaves: totals.reduce((sum, { count }) => sum + count, 0) };
};

/**
 * The next so many days that have orders, from one day on (that day too), each with its totals. Written
 * orders are found however far off, standing ones within 400 days.
 */
export function daysAhead(circle: Circle, from: DayKey, count: number): readonly BakeDay[] {
  const written = new Map<DayKey, Order[]>();
  for (const order of circle.orders) {
    if (order.day < from) continue;
    const same = written.get(order.day);
    if (same) same.push(order);
    else written.set(order.day, [order]);
  }
  const standing = circle.standing.filter(({ until }) => until === null || until >= from);
  const names = namesOf(circle);
  const days: BakeDay[] = [];
  const look = (day: DayKey): void => {
    const orders = onDay(written.get(day) ?? [], standing, day);
    written.delete(day);
    if (orders.length > 0) days.push(bakeDay(day, inTurn(orders, names)));
  };
  const last = standing.length > 0 ? AHEAD : 0;
  for (let i = 0, day = from; i <= last && days.length < count; i++, day = dayAfter(day, 1)) {
    look(day);
  }
  for (const day of [...written.keys()].toSorted()) {
    if (days.length < count) look(day);
  }
  return days.slice(0, Math.max(0, count));
}
