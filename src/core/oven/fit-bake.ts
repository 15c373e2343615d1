import type { Vessel } from '../formula/formula.ts';
import type { Grams, Minutes } from '../units.ts';

/** The last open minutes only colour the crust and do not follow the mass. Judgement. */
export const COLOURING: Minutes = 10;
/** Least time under the lid, whatever the size. Practice. */
export const LEAST_LIDDED: Minutes = 15;
/** A bake is fitted by at most this share either way. Judgement. */
export const MOST_CHANGE = 0.35;

/**
 * Factor on the core-driven part of a bake when a piece of `from` grams becomes one of `to` grams, by
 * mass alone: t₂ = t₁·(m₂/m₁)^(2/3). Both above 0.
 * Source: Jin, Wang & Wang 2021, AIP Adv. 11:115316.
 *
 * @example
 * massFactor(900, 1500) // → 1.4057
 */
export const massFactor = (from: Grams, to: Grams): number => (to / from) ** (2 / 3);

/**
 * The same, held within ± 35 %: further off the printed minutes say nothing of this loaf.
 * Source: as `massFactor`; the limit is judgement.
 *
 * @example
 * bakeFactor(900, 500) // → 0.6758
 * bakeFactor(900, 1500) // → 1.35
 */
export const bakeFactor = (from: Grams, to: Grams): number =>
  Math.min(1 + MOST_CHANGE, Math.max(1 - MOST_CHANGE, massFactor(from, to)));

/**
 * Lidded and open minutes fitted to another piece weight: all but the last ten open minutes scale
 * with `bakeFactor`, whole minutes come out. The lid of a pot stays on for 15 minutes at least, a tin
 * (`lidded` 0) has none, and steam on a stone stays as long as it was: it sets the skin, which does
 * not wait for the core.
 * Source: as `bakeFactor`; least lidded time is common practice, no source; the steam is judgement.
 *
 * @example
 * fitBake({ lidded: 18, open: 20 }, 900, 1200) // → { lidded: 22, open: 22 }
 * fitBake({ lidded: 0, open: 45 }, 900, 1200) // → { lidded: 0, open: 52 }
 * fitBake({ lidded: 15, open: 25, vessel: 'stone' }, 900, 1200) // → { lidded: 15, open: 31 }
 */
export function fitBake(
  bake: { readonly lidded: Minutes; readonly open: Minutes; readonly vessel?: Vessel },
  from: Grams,
  to: Grams,
): { readonly lidded: Minutes; readonly open: Minutes } {
  const { lidded, open, vessel = 'pot' } = bake;
  if (from === to) return { lidded, open };
  const factor = bakeFactor(from, to);
  const colouring = Math.min(COLOURING, open);
  if (vessel === 'stone') {
    const core = (lidded + open - colouring) * factor - lidded;
    return { lidded, open: Math.round(Math.max(0, core) + colouring) };
  }
  return {
    lidded: Math.max(Math.min(LEAST_LIDDED, lidded), Math.round(lidded * factor)),
    open: Math.round((open - colouring) * factor + colouring),
  };
}
