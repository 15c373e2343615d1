import { fitBake } from '../oven/fit-bake.ts';
import type { Grams } from '../units.ts';
import type { Process, Shaping, Vessel } from './formula.ts';
import { touchOf } from './touch-of.ts';

/** What a vessel brings with it: how long the oven heats, bakes under lid or steam, open, and heats again. */
export type OvenMinutes = Pick<Process, 'preheat' | 'lidded' | 'open' | 'recovery'>;
/** What a way of shaping brings with it, beside the oven's minutes. */
export type ShapingMinutes = Pick<Process, 'benchRest' | 'touches' | 'cool'>;
/** What the last rise is made of: cold on the counter and in the fridge, or warm. */
export type ProofMinutes = Pick<Process, 'counter' | 'retard' | 'warm'>;

/** Minutes of an oven, and the piece of dough that they are for, g. */
interface Baked extends OvenMinutes {
  readonly piece: Grams;
}

/** As in the formulas that come with the program: assets/formulas, each named beside its numbers. */
const POT: Baked = { piece: 900, preheat: 45, lidded: 18, open: 20, recovery: 10 }; // lane-wheat
const STONE: Baked = { piece: 800, preheat: 60, lidded: 15, open: 22, recovery: 10 }; // olive-seed
const TIN: Baked = { piece: 850, preheat: 30, lidded: 0, open: 40, recovery: 10 }; // barley-tin
/** A dense rye wants longer in its tin. */
const RYE_TIN: Baked = { piece: 1000, preheat: 30, lidded: 0, open: 55, recovery: 10 }; // harbour-rye

const OVEN: Readonly<Record<Vessel, Baked>> = { pot: POT, stone: STONE, tin: TIN };

/** Between two touches of the dough, minutes: common practice, no source; so in every starter formula. */
export const FOLD_GAP = 30;
/** A sheet, counted from the mix: common practice, no source; so in cherry-hazelnut. */
export const SHEET_AT = 60;

const FOLD = touchOf('fold', FOLD_GAP);
const SHAPING: Readonly<Record<Shaping, ShapingMinutes>> = {
  round: { benchRest: 20, touches: [FOLD, FOLD, FOLD], cool: 120 }, // lane-wheat
  scoop: { benchRest: 0, touches: [], cool: 960 }, // harbour-rye
};

const COLD: ProofMinutes = { counter: 20, retard: 840, warm: 0 }; // lane-wheat
/** lane-today, barley-tin and harbour-rye. On a stone: as in a pot, where the loaf has a basket too. */
const WARM = { pot: 160, stone: 160, tin: 155, scoop: 90 } as const;

/**
 * The oven's usual minutes for a vessel, fitted to the piece: those of our own starter formula that
 * bakes so. A spooned dough has those of a dense rye in any vessel.
 *
 * Source: assets/formulas (common practice); the fit is `fitBake`'s. Failure: none.
 *
 * @example
 * usualOven('tin', 'round', 850) // → { preheat: 30, lidded: 0, open: 40, recovery: 10 }
 * usualOven('pot', 'round', 500) // → { preheat: 45, lidded: 15, open: 17, recovery: 10 }
 */
export function usualOven(vessel: Vessel, shaping: Shaping, piece: Grams): OvenMinutes {
  const { piece: from, ...minutes } = shaping === 'scoop' ? RYE_TIN : OVEN[vessel];
  return { ...minutes, ...fitBake({ ...minutes, vessel }, from, piece) };
}

/** What a way of shaping usually has. Source: as above. */
export const usualShaping = (shaping: Shaping): ShapingMinutes => SHAPING[shaping];

/** The minutes of a cold or a warm last rise. Source: as above; the dough clock knows better. */
export const usualProof = (
  proof: 'cold' | 'warm',
  { vessel, shaping }: Pick<Process, 'vessel' | 'shaping'>,
): ProofMinutes =>
  proof === 'cold'
    ? COLD
    : { counter: 0, retard: 0, warm: shaping === 'scoop' ? WARM.scoop : WARM[vessel] };
