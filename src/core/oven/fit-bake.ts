import type { Grams, Minutes } from '../units.ts';

/** The last open minutes only colour the crust and do not follow the mass. Judgement. */
export const COLOURING: Minutes = 10;
/** Least time under the lid, whatever the size. Practice. */
export const LEAST_LIDDED: Minutes = 15;
/** A bake is fitted by at most this share either way. Judgement. */
const MOST_CHANGE = 0.35;

/**
 * Factor on the core-driven part of a bake when a piece of `from` grams becomes one of `to` grams:
 * t₂ = t₁·(m₂/m₁)^(2/3), held within ± 35 %.
 * Source: Jin, Wang & Wang 2021, AIP Adv. 11:115316; the limit is judgement.
 *
 * @example
 * bakeFactor(900, 500) // → 0.6758
 */
export function bakeFactor(from: Grams, to: Grams): number {
  const factor = (to / from) ** (2 / 3);
  return Math.min(1 + MOST_CHANGE, Math.max(1 - MOST_CHANGE, factor));
}

/**
 * Lidded and open minutes fitted to another piece weight: all but the last ten open minutes scale
 * with `bakeFactor`, the lid stays on for 15 minutes at least, whole minutes come out.
 * Source: as `bakeFactor`; least lidded time is common practice, no source.
 *
 * @example
 * fitBake({ lidded: 18, open: 20 }, 900, 1200) // → { lidded: 22, open: 22 }
 */
export function fitBake(
  bake: { readonly lidded: Minutes; readonly open: Minutes },
  from: Grams,
  to: Grams,
): { readonly lidded: Minutes; readonly open: Minutes } {
  if (from === to) return { lidded: bake.lidded, open: bake.open };
  const factor = bakeFactor(from, to);
  const colouring = Math.min(COLOURING, bake.open);
  const lidded = Math.max(Math.min(LEAST_LIDDED, bake.lidded), Math.round(bake.lidded * factor));
  const open = Math.round((bake.open - colouring) * factor + colouring);
  return { lidded, open };
}
