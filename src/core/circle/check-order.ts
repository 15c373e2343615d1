import type { Notice } from '../formula/notice.ts';
import type { Formula } from '../formula/formula.ts';
import { BREAD } from '../formula/piece-for-bread.ts';
import { showAllergens } from '../speech/show-allergen.ts';
import { showBread } from '../speech/show-bread.ts';
import { showParts } from '../speech/show-part.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import type { Circle, Order } from './circle.ts';
import { dayAfter, isDayKey, type DayKey } from './day-key.ts';
import { ordersOn } from './orders.ts';
import { watchedIn } from './watched.ts';

/** Loaves of one line. Judgement: more than any home oven's day, and two digits to key in. */
export const LINE = { least: 1, most: 99 } as const;

/** What is asked for, before it is written. */
export type Asked = Pick<Order, 'id' | 'who' | 'day' | 'at' | 'lines' | 'standing'>;

/** When and with what an order is looked at. */
export interface AskedNow {
  readonly circle: Circle;
  /** The Book's breads; one that is no more on its list is still known. */
  readonly breads: readonly Formula[];
  readonly today: DayKey;
  readonly minute: MinuteOfDay;
}

export interface OrderChecked {
  /** Why it is not taken; null: it may be. */
  readonly refused: Notice | null;
  /** What is answered before it is taken, one by one; it may be taken all the same. */
  readonly asks: readonly Notice[];
  /** The same neighbour's other order of that day, which it might be added to. */
  readonly already: Order | null;
}

const notice = (key: string, values: Notice['values'] = {}): Notice => ({ key, values });

const isWhole = (n: number, { least, most }: { least: number; most: number }): boolean =>
  Number.isInteger(n) && n >= least && n <= most;

function refusal(asked: Asked, { circle, breads, today }: AskedNow): Notice | null {
  if (!isDayKey(asked.day)) return notice('orderNoDay');
  if (asked.day < today) return notice('orderPast');
  if (!circle.neighbours.some(({ id }) => id === asked.who)) return notice('orderNobody');
  if (asked.at !== null && !isWhole(asked.at, { least: 0, most: 24 * 60 - 1 })) {
    return notice('orderNoHour');
  }
  if (asked.lines.length === 0) return notice('orderEmpty');
  for (const { bread, count, grams } of asked.lines) {
    if (!breads.some(({ id }) => id === bread)) return notice('orderNoBread');
    if (!isWhole(count, LINE)) return notice('orderCount', LINE);
    if (grams !== null && !(grams >= BREAD.least && grams <= BREAD.most)) {
      return notice('orderWeight', BREAD);
    }
  }
  return null;
}

/** The minute at which orders for a day close; null: they never do. */
export const closingOf = (
  { ways }: Circle,
  day: DayKey,
): { readonly day: DayKey; readonly at: MinuteOfDay } | null =>
  ways.closes && { day: dayAfter(day, -ways.closes.days), at: ways.closes.at };

const isPast = (
  then: { readonly day: DayKey; readonly at: MinuteOfDay },
  { today, minute }: AskedNow,
): boolean => today > then.day || (today === then.day && minute >= then.at);

/** What a neighbour's list has to do with the breads of an order, each caution once. */
function cautions({ who, lines }: Asked, { circle, breads }: AskedNow): readonly Notice[] {
  const watch = circle.neighbours.find(({ id }) => id === who)?.watch ?? [];
  return [...new Set(lines.map(({ bread }) => bread))].flatMap((bread) => {
    const formula = breads.find(({ id }) => id === bread);
    if (!formula) return [];
    const { named, open, unanswered } = watchedIn(watch, formula);
    const name = showBread(formula.name);
    return [
      ...(named.length > 0
        ? [notice('watchNamed', { name, allergens: showAllergens(named) })]
        : []),
      ...(open.length > 0 ? [notice('watchOpen', { name, allergens: showAllergens(open) })] : []),
      ...(unanswered.length > 0
        ? [notice('watchUnknown', { name, filling: showParts(unanswered) })]
        : []),
    ];
  });
}

/**
 * Whether an order may be taken: what is refused, and what is asked again. Refused: a day that is none
 * or is over, a neighbour or a bread that is not known, no lines, a count outside 1–99, a weight outside
 * 130–2100 g. Asked: a bread that brings what this neighbour must not eat, or of which it is not known;
 * after the hour at which orders close, or at which it was to be fetched; a second order of the same day.
 */
export function checkOrder(asked: Asked, now: AskedNow): OrderChecked {
  const refused = refusal(asked, now);
  if (refused) return { refused, asks: [], already: null };
  const asks: Notice[] = [...cautions(asked, now)];
  const { circle } = now;
  const closes = closingOf(circle, asked.day);
  if (asked.at !== null && isPast({ day: asked.day, at: asked.at }, now)) {
    asks.push(notice('orderHourPast'));
  } else if (closes && isPast(closes, now)) {
    asks.push(notice('orderClosed', { day: closes.day, minute: closes.at }));
  }
  const same = ({ id, who, standing }: Order): boolean =>
    who === asked.who && id !== asked.id && (standing === null || standing !== asked.standing);
  const already = ordersOn(circle, asked.day).find(same) ?? null;
  if (already) asks.push(notice('orderTwice'));
  return { refused: null, asks, already };
}
