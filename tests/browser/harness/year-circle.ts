import type { Circle, Order } from '../../../src/core/circle/circle.ts';
import { dayAfter } from '../../../src/core/circle/day-key.ts';

const WEEKS = 50;
const EACH = 40;
const BREADS = ['lane-wheat', 'cherry-hazelnut', 'olive-seed', 'barley-tin'] as const;

/** A year of a circle of forty: an order of each for every bake day, 2,000 in all, the last day weeks ahead. */
export function yearCircle(today: string): Partial<Circle> {
  const neighbours = Array.from({ length: EACH }, (_, n) => ({
    id: `n${n}`,
    name: `Mark ${n}`,
    watch: n % 7 === 0 ? ['sesame'] : [],
  }));
  const orders = Array.from({ length: WEEKS * EACH }, (_, n): Order => {
    const week = Math.floor(n / EACH);
    return {
      ...{ id: `o${n}`, who: `n${n % EACH}`, day: dayAfter(today, 7 * (week - WEEKS + 4)) },
      ...{ at: 600 + 15 * (n % 8), paid: n % 3 === 0, handed: null, made: n, standing: null },
      lines: [{ bread: BREADS[n % 4]!, count: 1 + (n % 2), grams: null, cut: false }],
    };
  });
  return { neighbours, orders };
}
