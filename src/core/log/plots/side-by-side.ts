import type { Spot } from '../drawing.ts';
import type { Place } from './frame.ts';

/** mm from one mark's middle to the next, where two would cover each other. */
const APART = 2.9;
/** How far a mark is moved at most, in such steps: beyond that it would tell another value. Judgement. */
const FURTHEST = { x: 3, y: 1 } as const;

/** The nearest first, aside before up or down. */
const STEPS: readonly Spot[] = [0, 1, -1].flatMap((up) =>
  Array.from({ length: 2 * FURTHEST.x + 1 }, (_, n): Spot => {
    const aside = Math.ceil(n / 2) * (n % 2 === 1 ? 1 : -1);
    return [aside * APART, up * FURTHEST.y * APART];
  }),
);

/**
 * Marks of one place side by side: each moved by the least that leaves it seen, within its place; the first
 * of the list stay where they are. Where nothing is free near by, it lies on another. In the list's order.
 */
export function sideBySide(spots: readonly Spot[], place: Place): readonly Spot[] {
  const taken: Spot[] = [];
  for (const [x, y] of spots) {
    const free = STEPS.map(([aside, up]): Spot => [x + aside, y + up]).find(
      ([a, b]) =>
        a >= place.left &&
        a <= place.right &&
        b >= place.top &&
        b <= place.bottom &&
        !taken.some(([c, d]) => Math.hypot(a - c, b - d) < APART - 1e-9),
    );
    taken.push(free ?? [x, y]);
  }
  return taken;
}
