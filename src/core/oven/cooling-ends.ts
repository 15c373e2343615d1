import { MINUTE, type Instant, type Minutes } from '../units.ts';

/** Minutes after which a loaf is under 35 °C and may be bagged: 1–2 h. Seen in print. */
const BAG = { least: 60, most: 120 } as const;
/** Minutes after which it may be cut: typically 2–3 h, a dense rye 12–24. Seen in print. */
const SLICE: Minutes = 120;

/**
 * When a loaf that came out may be bagged and cut, by its process's minutes of cooling: 60–180, or
 * 720–1440 for a dense rye. Warm in a bag it sweats and its crust goes soft.
 * Source: seen in print.
 *
 * @example
 * coolingEnds(0, 120) // → { bagAt: 7200000, sliceAt: 7200000 }
 * coolingEnds(0, 720) // → { bagAt: 7200000, sliceAt: 43200000 }
 */
export function coolingEnds(
  outAt: Instant,
  cool: Minutes,
): { readonly bagAt: Instant; readonly sliceAt: Instant } {
  const bag = Math.min(BAG.most, Math.max(BAG.least, cool));
  return { bagAt: outAt + bag * MINUTE, sliceAt: outAt + Math.max(SLICE, cool) * MINUTE };
}
