import type { Circle, Order, OrderLine, Standing } from './circle.ts';
import { dayAfter, weekdayOf, type DayKey } from './day-key.ts';
import { standingOrderId } from './orders.ts';
import { drop, put, type Change, type Put } from './row.ts';

const sameLine = (a: OrderLine, b: OrderLine): boolean =>
  a.bread === b.bread && a.grams === b.grams && a.cut === b.cut;

/**
 * Lines and others put to them; loaves of one bread, weight and cut in one line.
 *
 * @example
 * withLines([{ bread: 'a', count: 2, grams: null, cut: false }], [{ bread: 'a', count: 1, grams: null, cut: false }]) // → [{ bread: 'a', count: 3, grams: null, cut: false }]
 */
export const withLines = (
  lines: readonly OrderLine[],
  more: readonly OrderLine[],
): readonly OrderLine[] =>
  more.reduce<readonly OrderLine[]>((all, line) => {
    const at = all.findIndex((one) => sameLine(one, line));
    if (at < 0) return [...all, line];
    return all.with(at, { ...all[at]!, count: all[at]!.count + line.count });
  }, lines);

/** What somebody had last: their latest day's order, or else what they have standing; null: nothing yet. */
export function lastOf(
  { orders, standing }: Circle,
  who: string,
): Pick<Order, 'lines' | 'at'> | null {
  let last: Order | null = null;
  for (const order of orders) {
    if (order.who !== who) continue;
    const later = last === null || order.day > last.day;
    if (later || (order.day === last!.day && order.made > last!.made)) last = order;
  }
  return last ?? standing.find((one) => one.who === who) ?? null;
}

const standingOf = (circle: Circle, id: string | null): Standing | null =>
  circle.standing.find((one) => one.id === id) ?? null;

/** Its order of a day that nobody has handed over or paid: nothing is lost with it. */
const isFree = ({ handed, paid }: Order): boolean => handed === null && !paid;

const writtenFrom = (circle: Circle, standing: string, day: DayKey): readonly Order[] =>
  circle.orders.filter((order) => order.standing === standing && order.day >= day);

/** An order is off its day; one of a standing order is left out on that day alone. */
export function takenOff(circle: Circle, order: Order): Change {
  const its = standingOf(circle, order.standing);
  const isWritten = circle.orders.some(({ id }) => id === order.id);
  const skips = its && [...its.skips.filter((day) => day !== order.day), order.day];
  return {
    puts: [
      ...(isWritten ? [drop('orders', order.id)] : []),
      ...(its && skips ? [put('standing', { ...its, skips })] : []),
    ],
  };
}

/**
 * A standing order ends before a day; where it had not begun by then it is gone. What was written of it
 * from that day on goes too, but for what is paid or handed over.
 */
export function endedBefore(circle: Circle, standing: Standing, day: DayKey): Change {
  const over = standing.from >= day;
  const gone = writtenFrom(circle, standing.id, day).filter(isFree);
  return {
    puts: [
      over
        ? drop('standing', standing.id)
        : put('standing', { ...standing, until: dayAfter(day, -1) }),
      ...gone.map(({ id }) => drop('orders', id)),
    ],
  };
}

/** What may be another of a standing order. */
export type StandingPart = Partial<Pick<Standing, 'lines' | 'at' | 'weekday' | 'until'>>;

/**
 * A standing order is another from a day on, and what it was before stays as it was: it goes on under a
 * fresh id, its days left out and its written orders with it. The order of that day itself changes too.
 * On another weekday what was written of it goes, but for what is paid or handed over.
 */
export function changedFrom(
  circle: Circle,
  standing: Standing,
  day: DayKey,
  part: StandingPart,
  freshId: string,
): Change {
  const begun = standing.from < day;
  const id = begun ? freshId : standing.id;
  const { lines = standing.lines, at = standing.at } = part;
  const next: Standing = {
    ...standing,
    ...part,
    id,
    from: begun ? day : standing.from,
    skips: begun ? standing.skips.filter((skip) => skip >= day) : standing.skips,
  };
  const moved = next.weekday !== standing.weekday;
  const ofIt = writtenFrom(circle, standing.id, next.from).flatMap((order): readonly Put[] => {
    if (moved) return isFree(order) ? [drop('orders', order.id)] : [];
    const its = { ...order, standing: id };
    return [put('orders', order.day === day ? { ...its, lines, at } : its)];
  });
  return {
    puts: [
      ...(begun ? [put('standing', { ...standing, until: dayAfter(day, -1) })] : []),
      put('standing', next),
      ...ofIt,
    ],
  };
}

/** An order every week from its day on; the order itself is the first of it. */
export const madeStanding = (order: Order, id: string): Change => ({
  puts: [
    put('standing', {
      id,
      who: order.who,
      weekday: weekdayOf(order.day),
      at: order.at,
      lines: order.lines,
      from: order.day,
      until: null,
      skips: [],
    }),
    drop('orders', order.id),
    put('orders', { ...order, id: standingOrderId(id, order.day), standing: id }),
  ],
});
