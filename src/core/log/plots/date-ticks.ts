import type { Instant } from '../../units.ts';
import type { Tick } from './frame.ts';
import type { ToldIn } from './told-in.ts';

/**
 * Bakes' own dates along an axis, those that matter most first: the last, the first, then every half between,
 * so that where few have room they are spread.
 */
export function dateTicks(at: readonly Instant[], { date }: ToldIn): readonly Tick[] {
  const sorted = [...new Set(at)].toSorted((a, b) => a - b);
  const order: number[] = [];
  for (let parts = 1; parts <= 8; parts *= 2)
    for (let n = 0; n <= parts; n += 1)
      order.push(Math.round((sorted.length - 1) * (1 - n / parts)));
  return [...new Set(order)].flatMap((n) =>
    sorted[n] === undefined ? [] : [{ value: sorted[n], label: date(sorted[n]) }],
  );
}
