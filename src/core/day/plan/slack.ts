import type { Link } from './chain.ts';
import type { Layers } from './layers.ts';
import type { Solved } from './one-plan.ts';
import { forward, SAME, type Effort } from './shortest.ts';
import { placeInside } from './side-places.ts';

/** Points that a plan may cost more and still be fine. Judgement. */
const FINE = 1;

/** Slots of one touch: in all best plans, while it is fine, and the last at all. */
export interface Slack {
  readonly earliest: number;
  readonly latest: number;
  readonly fineUntil: number;
  readonly lastPossible: number;
}

/** Reads the four slots off the cost of the best plan through each slot. */
function slackOf(through: (slot: number) => number, lo: number, hi: number, best: number): Slack {
  let [earliest, latest, fineUntil, lastPossible] = [hi, lo, lo, lo];
  for (let t = lo; t <= hi; t += 1) {
    const cost = through(t);
    if (cost === Infinity) continue;
    lastPossible = t;
    if (cost <= best + FINE + SAME) fineUntil = t;
    if (cost > best + SAME) continue;
    earliest = Math.min(earliest, t);
    latest = t;
  }
  return { earliest, latest, fineUntil, lastPossible };
}

/** Slots an inside touch may have at all, by its own window. */
function insideWindow(
  link: Link,
  touch: number,
  at: number,
  next: number,
): readonly [number, number] {
  const side = link.sides.find((one) => one.touch === touch);
  const anchor = at + link.hands;
  if (side) return [anchor + Math.max(0, side.at - side.earlier), anchor + side.at + side.later];
  const { lag, hands } = link.before!;
  return [Math.max(anchor, next - lag.max - hands), next - lag.min - hands];
}

/** The touches inside one wait, the main touches standing at `at` and `next`. */
function insideSlack(
  { chain, costs }: Layers,
  link: Link,
  [at, next]: readonly [number, number],
  put: (touch: number, slack: Slack) => void,
): void {
  const inside = [
    ...link.sides.map((side) => side.touch),
    ...(link.before ? [link.before.touch] : []),
  ];
  if (inside.length === 0) return;
  const hands = (touch: number): number => chain.touches[touch]!.hands;
  const placed = (pin?: { touch: number; slot: number }): number =>
    placeInside(link, { costs, hands, pin }, at + link.hands, next)?.cost ?? Infinity;
  const best = placed();
  for (const touch of inside) {
    const [lo, hi] = insideWindow(link, touch, at, next);
    put(
      touch,
      slackOf((slot) => placed({ touch, slot }), lo, hi, best),
    );
  }
}

/**
 * By touch of a chain: where it stands in all best plans, until when the plan costs at most a point
 * more, and the last slot with a plan at all. What is inside a wait moves between main touches that stand.
 */
export function slacks(
  { plan: { steps, cost, chain }, layers, rows }: Solved,
  effort: Effort,
): readonly Slack[] {
  const found = new Array<Slack>(chain.touches.length);
  const front = forward(layers, effort);
  layers.layers.forEach(({ link, lo, hi }, i) => {
    const through = (slot: number): number => front[i]![slot - lo]! + rows[i]![slot - lo]!;
    found[link.touch] = slackOf(through, lo, hi, cost);
    insideSlack(layers, link, [steps[i]!, steps[i + 1]!], (touch, slack) => {
      found[touch] = slack;
    });
  });
  return found;
}
