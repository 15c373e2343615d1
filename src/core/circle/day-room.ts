import type { Formula } from '../formula/formula.ts';
import type { Equipment, MinuteOfDay } from '../kitchen/equipment.ts';
import type { TaughtLoss } from '../records/taught.ts';
import type { Grams } from '../units.ts';
import { ovenBatches, type BakesIn, type OvenBatch } from './oven-batch.ts';
import { ovenHours, roomFor, type DayHas, type Room } from './cap.ts';
import type { Circle, Order, OrderLine } from './circle.ts';
import { dayAfter, type DayKey } from './day-key.ts';
import { daysAhead, ordersOn } from './orders.ts';
import { dayWithRoom, wouldTake, type Asked, type WouldTake } from './would-take.ts';

/** What a day's room is reckoned from. */
export interface RoomAsk {
  readonly circle: Circle;
  readonly day: DayKey;
  /** Every bread of the Book, those off its list too. */
  readonly breads: readonly Formula[];
  readonly kitchen: BakesIn & Pick<Equipment, 'fridge' | 'bowls'>;
  /** What loaves of this kitchen lost in the oven. */
  readonly weighIns: readonly TaughtLoss[];
  /** An order that is being changed: it takes no room beside itself. */
  readonly but?: string | null;
}

export interface DayRoom {
  readonly taken: readonly OvenBatch[];
  readonly has: DayHas;
  /** The first loading; null: the oven's hours are not said. */
  readonly from: MinuteOfDay | null;
  readonly orders: readonly Order[];
}

const hasOf = ({ circle, kitchen }: RoomAsk): DayHas => ({
  oven: ovenHours(circle.ways.oven),
  fridge: kitchen.fridge.holds,
  bowls: kitchen.bowls,
});

const batched = (
  { breads, kitchen, weighIns }: RoomAsk,
  lines: readonly OrderLine[],
): readonly OvenBatch[] => ovenBatches(lines, breads, kitchen, weighIns).batches;

/** What a day has on it by its orders, standing ones too, and what it has to bake them with. */
export function dayRoom(ask: RoomAsk): DayRoom {
  const orders = ordersOn(ask.circle, ask.day).filter(({ id }) => id !== ask.but);
  const lines = orders.flatMap((order) => order.lines);
  return {
    taken: batched(ask, lines),
    has: hasOf(ask),
    from: ask.circle.ways.oven?.from ?? null,
    orders,
  };
}

/** How many more loaves of a bread of so many grams when cool a day takes, and what binds. */
export const breadRoom = (ask: RoomAsk, bread: string, grams: Grams | null): Room | null => {
  const { taken, has } = dayRoom(ask);
  const one = batched(ask, [{ bread, grams, count: 1, cut: false }])[0];
  return one === undefined ? null : roomFor(one, taken, has);
};

/** A day's answer to an order, and the next day that takes all of it: null where it takes it itself, or none does. */
export interface RoomAnswer extends WouldTake {
  /** Of each line that has a known bread, in their order: how many it asks and how many still go. */
  readonly lines: readonly { readonly line: OrderLine; readonly go: number }[];
  readonly next: DayKey | null;
}

/** Bake days that are looked at for a next one. Judgement: two months of Saturdays. */
const NEXT_DAYS = 8;

/** Days that bread is fetched on later, and the same day a week later, whether anything is on it or not. */
function laterDays(
  ask: RoomAsk,
): readonly { readonly day: DayKey; readonly taken: readonly OvenBatch[] }[] {
  const week = dayAfter(ask.day, 7);
  const days = daysAhead(ask.circle, dayAfter(ask.day, 1), NEXT_DAYS).map(({ day }) => day);
  return [...new Set([...days, week])]
    .toSorted()
    .map((day) => ({ day, taken: dayRoom({ ...ask, day }).taken }));
}

/** Whether a day takes an order of such lines; see `wouldTake`. */
export function askRoom(ask: RoomAsk, lines: readonly OrderLine[]): RoomAnswer {
  const { taken, has, from } = dayRoom(ask);
  const asked = lines.flatMap((line): { line: OrderLine; batch: Asked }[] => {
    const batch = batched(ask, [line])[0];
    return batch === undefined ? [] : [{ line, batch: { ...batch, sliced: line.cut } }];
  });
  const batches = asked.map(({ batch }) => batch);
  const would = wouldTake(batches, taken, has, from);
  return {
    ...would,
    lines: asked.map(({ line }, i) => ({ line, go: would.go[i]! })),
    next: would.takes ? null : dayWithRoom(batches, laterDays(ask), has),
  };
}
