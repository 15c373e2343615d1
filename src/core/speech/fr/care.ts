import type * as english from '../words/care.ts';
import type { InTongue } from '../tongue.ts';

export const RAW_FLOUR =
  'La farine crue est un aliment cru : on n’y goûte pas. Lavez ensuite mains et plan de travail.';
export const RAW_DOUGH =
  'La pâte crue est un aliment cru : on n’y goûte pas. Lavez-vous ensuite les mains.';
export const ALLERGENS = 'Allergènes à nommer : fruits à coque, graines, lait.';
export const BURN = 'Brûlure : eau courante fraîche 20 minutes, appelez à l’aide.';
export const RING = 'Adultes seulement : les enfants restent à 1 m.';
export const MITTS = 'Fonte brûlante : gants secs, deux mains, visage en arrière.';
export const RATING =
  'Bouton qui tient la chaleur ; souvent le papier cuisson ne tient que {parchmentHeat}.';
export const HOT_IRON = 'Cocotte et couvercle restent brûlants : enfants à 1 m.';
export const WASH_AGAIN = 'Relavez-les après la farine ou la pâte crue.';
export const STEAM = 'La vapeur brûle : versez de côté, visage en arrière.';

export const careLines: InTongue<typeof english.careLines> = {
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
};
