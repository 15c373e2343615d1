import type { Circle, OrderLine } from '../../../core/circle/circle.ts';
import { loafPrice } from '../../../core/circle/loaf-price.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import type { MessageRead } from '../../../core/circle/message.ts';
import { ordersOn, totalsOf } from '../../../core/circle/orders.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { handOver as words } from '../../../core/speech/words/hand-over.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMoney } from '../../../core/speech/money.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showMinute } from '../../../core/speech/show-time.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { House } from '../../house.ts';
import { dateShown, weekdayShown } from '../today.ts';

/** A bread by its formula's id, one that is off the Book's list too. */
export const formulaOf = (house: Pick<House, 'book'>, id: string): Formula | null =>
  house.book().find((entry) => entry.id === id)?.latest ?? null;

/** How a day's orders are written here: hours and weights as this tablet has them, prices where they are set. */
export function handRead(
  house: Pick<House, 'book' | 'ways' | 'equipment'>,
  circle: Circle,
  day: DayKey,
): MessageRead {
  const { currency } = circle.ways;
  const totals = totalsOf(ordersOn(circle, day));
  const priceOf = ({ bread, grams, count }: OrderLine): number | null => {
    const formula = formulaOf(house, bread);
    if (formula === null) return null;
    const loaves = totals.find((one) => one.bread === bread)?.count ?? count;
    const price = loafPrice(formula, { loaves, grams }, circle, house.equipment().scale);
    return price === null ? null : price * count;
  };
  return {
    day: `${weekdayShown(day)} ${dateShown(day)}`,
    hour: (at) => showMinute(at, house.ways().clock),
    bread(id) {
      const formula = formulaOf(house, id);
      return formula ? showBread(formula.name) : words.unknownBread;
    },
    weight: (grams) => showWeight(grams, house.ways()),
    price(lines) {
      const prices = lines.map(priceOf);
      const isKnown = prices.every((price): price is number => price !== null);
      return isKnown
        ? showMoney(
            prices.reduce((sum, one) => sum + one, 0),
            currency,
          )
        : null;
    },
  };
}

/** '1 loaf', '14 loaves'. */
export const loavesShown = (count: number): string =>
  count === 1 ? words.loaf : fill(words.loaves, { count });
