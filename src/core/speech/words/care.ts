/**
 * The cautions that more than one step needs, in the wording of the usual public advice:
 * raw flour and dough (US FDA, CDC, Health Canada); hot iron, steam and the 1 m ring (NFPA);
 * burns (UK fire services); heats in core/speech/heats.
 */

import { inTongue } from '../tongue.ts';

export const RAW_FLOUR = 'Raw flour is raw food: no tasting. Wash hands and bench after.';
export const RAW_DOUGH = 'Raw dough is raw food: no tasting. Wash hands after.';
export const ALLERGENS = 'Nuts, seeds and milk are allergens: name them.';
export const BURN = 'Burned: cool running water 20 minutes, get help.';
export const RING = 'Grown-up only: children stand 1 m back.';
export const MITTS = 'Hot iron: dry mitts, both hands, face back.';
export const RATING = 'Heatproof knob; much parchment takes {parchmentHeat}.';
export const HOT_IRON = 'Pot and lid stay hot: children 1 m back.';
export const WASH_AGAIN = 'Wash them again after raw flour or dough.';
export const STEAM = 'Steam burns: pour from the side, face back.';

/** Of these, what is said by itself. */
export const careLines = inTongue('care', 'careLines', {
  RAW_FLOUR,
  RAW_DOUGH,
  ALLERGENS,
  BURN,
  RING,
  MITTS,
  RATING,
  HOT_IRON,
  WASH_AGAIN,
  STEAM,
});
