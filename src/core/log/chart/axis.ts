import { DAY, MINUTE, type Instant } from '../../units.ts';

/** Where a value stands, in mm. */
export type Scale = (value: number) => number;

/**
 * A straight scale: `from` stands at `start`, `to` at `end`; upward where `end` is the smaller. A span of
 * nothing stands in the middle.
 *
 * @example
 * scaleOf([20, 30], [100, 0])(25) // → 50
 * scaleOf([20, 20], [100, 0])(20) // → 50
 */
export const scaleOf = (
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): Scale =>
  to === from
    ? () => (start + end) / 2
    : (value) => start + ((value - from) / (to - from)) * (end - start);

/**
 * The smallest step of 1, 2 or 5 tens that parts a span into at most so many pieces.
 *
 * @example
 * niceStep(9, 5) // → 2
 * niceStep(0.9, 2) // → 0.5
 */
export function niceStep(span: number, pieces: number): number {
  const least = span / Math.max(1, pieces);
  if (!(least > 0)) return 1;
  const ten = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5].find((one) => one * ten >= least * (1 - 1e-9)) ?? 10) * ten;
}

/**
 * From the least to the most of some values, out to whole steps: nothing stands on the rim of a panel for
 * want of room. At least one step high; [0, 1] where there is no value.
 *
 * @example
 * niceSpan([23.4, 25.1], 5) // → [23, 25.5]
 * niceSpan([24], 5, 2) // → [22, 26]
 */
export function niceSpan(
  values: readonly number[],
  pieces: number,
  least = 1e-6,
): readonly [number, number] {
  if (values.length === 0) return [0, 1];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const step = niceStep(Math.max(high - low, least), pieces);
  const [from, to] = [rounded(Math.floor(low / step), step), rounded(Math.ceil(high / step), step)];
  if (to - from > least * (1 - 1e-9) && to > from) return [from, to];
  return [from - Math.max(step, least), to + Math.max(step, least)];
}

/** So many steps, without the dust of binary fractions. */
const rounded = (count: number, step: number): number => Number((count * step).toPrecision(12));

/**
 * The values of a span that get a tick: whole steps, at most `most` of them, which need
 * not be whole: one more than the pieces there is room for.
 *
 * @example
 * ticksIn([22, 26], 5) // → [22, 23, 24, 25, 26]
 * ticksIn([0, 100], 3) // → [0, 50, 100]
 */
export function ticksIn([from, to]: readonly [number, number], most: number): readonly number[] {
  const step = niceStep(to - from, Math.max(1, most - 1));
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => rounded(first + i, step));
}

/** How a day is parted: minutes between two ticks. */
const PARTS = [5, 10, 15, 30, 60, 120, 180, 360, 720] as const;

/** What a chart asks of the wall: the last midnight before an instant. */
export type Midnight = (at: Instant) => Instant;

/** Each midnight of a span, the one before it first. A day of the clock's change is an hour off noon. */
function midnightsOf([from, to]: readonly [Instant, Instant], midnight: Midnight): Instant[] {
  const found = [midnight(from)];
  while (found.at(-1)! < to) found.push(midnight(found.at(-1)! + 1.5 * DAY));
  return found;
}

/**
 * The instants of a span that get a tick, at most `most`: whole parts of each day from its midnight on, or
 * midnights every so many days. None where no part of a day lies in it.
 *
 * @example
 * timeTicks([0, 7200000], 3, (at) => Math.floor(at / 86400000) * 86400000) // → [0, 3600000, 7200000]
 */
export function timeTicks(
  [from, to]: readonly [Instant, Instant],
  most: number,
  midnight: Midnight,
): readonly Instant[] {
  const isIn = (at: Instant): boolean => at >= from && at <= to;
  const days = midnightsOf([from, to], midnight);
  for (const minutes of PARTS) {
    const step = minutes * MINUTE;
    if ((to - from) / step > most) continue;
    const ticks = days.flatMap((day, n) => {
      const next = days[n + 1] ?? day + DAY;
      // On the day of a change the last part may be cut short, and too near the next midnight.
      return Array.from(
        { length: Math.ceil((next - day) / step) },
        (_, i) => day + i * step,
      ).filter((at) => isIn(at) && (at === day || next - at >= step / 2));
    });
    if (ticks.length <= most) return ticks;
  }
  const midnights = days.filter(isIn);
  const every = Math.max(1, Math.ceil(midnights.length / Math.max(1, most)));
  return midnights.filter((_, n) => n % every === 0);
}
