import type { Circle } from '../../../core/circle/circle.ts';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';

/** Hours that bread is fetched at where nobody has said others yet. Judgement. */
const FIRST: readonly MinuteOfDay[] = [8, 10, 12, 15, 17, 18].map((hour) => hour * 60);

/** Six hours to choose from, in their order: what this circle asked for most often, and then some more. */
export function usualHours({
  orders,
  standing,
}: Pick<Circle, 'orders' | 'standing'>): readonly MinuteOfDay[] {
  const counts = new Map<MinuteOfDay, number>();
  for (const { at } of [...orders, ...standing]) {
    if (at !== null) counts.set(at, (counts.get(at) ?? 0) + 1);
  }
  const asked = [...counts].toSorted(([a, n], [b, m]) => m - n || a - b).map(([at]) => at);
  return [...new Set([...asked, ...FIRST])].slice(0, 6).toSorted((a, b) => a - b);
}
