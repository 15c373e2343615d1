import type { Order } from './circle.ts';

/**
 * What is still to be weighed of the orders of some days, the earliest first: nothing of what is handed
 * over, and less the loaves of bakes that run, each taken for the earliest order of its bread. A bake is
 * tied to no order, so that is a guess (judgement): a bread that is begun is for whoever wants it first.
 *
 * @param making loaves of bakes that run, by their formula's id
 */
export function stillToBake<D extends { readonly orders: readonly Order[] }>(
  days: readonly D[],
  making: Readonly<Record<string, number>>,
): readonly D[] {
  const left = new Map(Object.entries(making));
  const lessMade = (order: Order): Order => ({
    ...order,
    lines: order.lines.flatMap((line) => {
      const made = Math.min(line.count, left.get(line.bread) ?? 0);
      left.set(line.bread, (left.get(line.bread) ?? 0) - made);
      return made === line.count ? [] : [{ ...line, count: line.count - made }];
    }),
  });
  return days.map((day) => ({
    ...day,
    orders: day.orders
      .filter(({ handed }) => handed === null)
      .map(lessMade)
      .filter(({ lines }) => lines.length > 0),
  }));
}
