import type { Grams } from '../units.ts';
import { binFlour } from './bin-flour.ts';
import type { Formula } from './formula.ts';
import { LOAVES, PIECE } from './make-recipe.ts';
import { doughFor, pieceFrom, scalePct } from './mixed-amounts.ts';
import type { Notice } from './notice.ts';
import { BREAD, pieceForBread } from './piece-for-bread.ts';

/** What a bake is measured by. `loaves` left out: as many as come nearest to the formula's piece. */
export type ScaleBy =
  | { readonly by: 'pieces'; readonly loaves: number; readonly piece: Grams }
  /** `bread`: weight of a baked loaf, g; `loss`: the share a piece loses in this oven, if known. */
  | {
      readonly by: 'bread';
      readonly loaves: number;
      readonly bread: Grams;
      readonly loss?: (piece: Grams) => number;
    }
  /** All flour, the levain's counted in. */
  | { readonly by: 'flour'; readonly grams: Grams; readonly loaves?: number }
  /** All dough that is mixed. */
  | { readonly by: 'dough'; readonly grams: Grams; readonly loaves?: number }
  /** What flour is left, by its id; a flour not named is there in plenty. */
  | {
      readonly by: 'bin';
      readonly flours: Readonly<Record<string, Grams>>;
      readonly loaves?: number;
    };

/** A bake's size: `loaves` pieces of `piece` g, the dough to mix for them and all flour in it. */
export interface Scaled {
  readonly loaves: number;
  readonly piece: Grams;
  readonly dough: Grams;
  readonly totalFlour: Grams;
  /** The flour that runs out first, where it was measured by the bin. */
  readonly scarcest?: string;
}

export type ScaledBy =
  | { readonly scaled: Scaled; readonly reason?: never }
  | { readonly scaled: null; readonly reason: Notice };

const refuse = (key: string, values: Notice['values']): ScaledBy => ({
  scaled: null,
  reason: { key, values },
});

const nearestLoaves = (formula: Formula, dough: Grams): number =>
  Math.min(
    LOAVES.most,
    Math.max(LOAVES.least, Math.round(dough / doughFor(formula, 1, formula.piece))),
  );

/**
 * How large a bake is, however its baker measures it: by pieces, baked loaves, all flour, all dough,
 * or the flour that is left. Where flour or dough is given all of it is used, shared evenly; `loaves`
 * and `piece` then make the same recipe (`makeRecipe`, which rounds for the scale).
 *
 * No answer, with a reason: `loavesOutside`, `pieceOutside`, `breadOutside` (got, least, most),
 * `amountOutside` (got: nothing that can be divided), `binEmpty` (flour: none left for the dough
 * once the starter is fed).
 * Source: dough = F_T·Σpct/100, dough = n·piece/(1 − 2 %), of a filling that goes in later without the
 * loss (`mixed-amounts.ts`): arithmetic.
 */
export function scaleBy(formula: Formula, by: ScaleBy): ScaledBy {
  const pct = scalePct(formula);
  const sized = (loaves: number, piece: Grams, scarcest?: string): ScaledBy => {
    if (!(Number.isInteger(loaves) && loaves >= LOAVES.least && loaves <= LOAVES.most)) {
      return refuse('loavesOutside', { got: String(loaves), ...LOAVES });
    }
    if (!(piece >= PIECE.least && piece <= PIECE.most)) {
      return refuse('pieceOutside', { got: String(piece), ...PIECE });
    }
    const dough = doughFor(formula, loaves, piece);
    const scaled = { loaves, piece, dough, totalFlour: (dough * 100) / pct };
    return { scaled: scarcest === undefined ? scaled : { ...scaled, scarcest } };
  };
  const ofDough = (dough: Grams, loaves?: number, scarcest?: string): ScaledBy => {
    if (!(dough > 0 && dough < Infinity)) return refuse('amountOutside', { got: String(dough) });
    const count = loaves ?? nearestLoaves(formula, dough);
    return sized(count, pieceFrom(formula, dough, count), scarcest);
  };
  switch (by.by) {
    case 'pieces':
      return sized(by.loaves, by.piece);
    case 'bread':
      if (!(by.bread >= BREAD.least && by.bread <= BREAD.most)) {
        return refuse('breadOutside', { got: String(by.bread), ...BREAD });
      }
      return sized(by.loaves, pieceForBread(by.bread, by.loss));
    case 'dough':
      return ofDough(by.grams, by.loaves);
    case 'flour':
      return ofDough((by.grams * pct) / 100, by.loaves);
    case 'bin': {
      const { scarcest, totalFlour } = binFlour(formula, by.flours);
      if (!(totalFlour > 0)) return refuse('binEmpty', { flour: scarcest?.name ?? '' });
      return ofDough((totalFlour * pct) / 100, by.loaves, scarcest?.id);
    }
  }
}
