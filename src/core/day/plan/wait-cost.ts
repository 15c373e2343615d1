import { slotsIn } from './grid.ts';
import type { Feed, Wait } from './types.ts';

/**
 * How much of a price is absolute, the rest by squares. Pure squares nudge many waits a little, pure
 * absolutes run single waits to their limits. Judgement, tried on random bakes.
 */
const ABSOLUTE = 0.25;

/** Share of the price for going the share x (0–1) of the way from typical to a limit. */
export const share = (x: number): number => ABSOLUTE * x + (1 - ABSOLUTE) * x * x;

/** The lengths a wait may have and what each costs: `cost[d − min]`, d in slots; Infinity: not allowed. */
export interface Lengths {
  readonly min: number;
  readonly max: number;
  readonly cost: Float64Array;
  /** The feed each length belongs to, where there is a choice. */
  readonly choice: readonly (string | undefined)[] | null;
}

/** @throws Error where the four minutes are not in fives and in order, or a weight is below 0 */
export function waitLengths(wait: Wait, what: string): Lengths {
  const min = slotsIn(wait.min, `${what}: min`);
  const from = slotsIn(wait.typicalFrom, `${what}: typicalFrom`);
  const to = slotsIn(wait.typicalTo, `${what}: typicalTo`);
  const max = slotsIn(wait.max, `${what}: max`);
  if (!(min <= from && from <= to && to <= max))
    throw new Error(`${what}: min, typicalFrom, typicalTo and max must be in order.`);
  if (!(wait.weightShort >= 0 && wait.weightLong >= 0))
    throw new Error(`${what}: a weight must be 0 or more.`);
  const cost = Float64Array.from({ length: max - min + 1 }, (_, i) => {
    const d = min + i;
    if (d < from) return wait.weightShort * share((from - d) / (from - min));
    return d > to ? wait.weightLong * share((d - to) / (max - to)) : 0;
  });
  return { min, max, cost, choice: null };
}

/** A length belongs to the cheapest feed whose window holds it; lengths between windows are none. */
export function feedLengths(feeds: readonly Feed[], what: string): Lengths {
  if (feeds.length === 0) throw new Error(`${what}: there must be a feed to choose.`);
  const each = feeds.map((feed) => ({
    ...waitLengths(feed, `${what}, ${feed.name}`),
    name: feed.name,
    extra: feed.extra,
  }));
  const min = Math.min(...each.map((one) => one.min));
  const max = Math.max(...each.map((one) => one.max));
  const cost = new Float64Array(max - min + 1).fill(Infinity);
  const choice: (string | undefined)[] = Array.from(cost, () => undefined);
  for (const one of each) {
    for (let d = one.min; d <= one.max; d += 1) {
      const points = one.cost[d - one.min]! + one.extra;
      if (points >= cost[d - min]!) continue;
      cost[d - min] = points;
      choice[d - min] = one.name;
    }
  }
  return { min, max, cost, choice };
}

/** Cost of a side touch by its place: index 0 is `earlier` before its time. */
export function shiftCosts(earlier: number, later: number, weight: number): Float64Array {
  return Float64Array.from({ length: earlier + later + 1 }, (_, i) => {
    const by = i - earlier;
    if (by === 0) return 0;
    return weight * share(by < 0 ? -by / earlier : by / later);
  });
}
