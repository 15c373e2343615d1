import type * as english from '../words/book-parts.ts';
import type { InTongue } from '../tongue.ts';

export const bookParts: InTongue<typeof english.bookParts> = {
  addFlour: 'Ajouter une farine',
  addWater: 'Ajouter un bassinage',
  begins: 'Elle prend un dixième ; les autres se partagent le reste.',
  full: 'Huit farines au plus.',
  small: 'Une autre farine ici est trop petite pour céder.',
  byName: 'Une autre',
  nameAsk: 'Comment s’appelle-t-elle ?',
  grainAsk: 'De quelle céréale ?',
  sharing: '{value}. Le reste suit.',
  about: 'À son sujet',
  name: 'Son nom',
  grain: 'Sa céréale',
  counted: 'Pour cent de quoi ?',
  countedAsk: 'Sur quoi compter la garniture ?',
  countedDetail: 'Vaut pour toutes les garnitures de ce pain. Leurs poids restent.',
  ofFlour: 'Sur la farine',
  ofFlourMeans: 'comme toutes les autres lignes',
  ofDough: 'Sur la pâte',
  ofDoughMeans: 'telle qu’avant de les ajouter',
  ofDoughValue: '{percent} % de la pâte · {grams}',
  soak: 'Eau de trempage',
  soakNone: 'aucune',
  soakAsk: 'Eau de trempage, %',
  soakNow: '{value}. Comptée sur son poids sec.',
  soakCare: 'Trempez au frigo au-delà de 2 heures.',
};

export const flourNames: InTongue<typeof english.flourNames> = {
  strongWheat: 'farine de blé de force',
  plainWheat: 'farine de blé blanche',
  wholeWheat: 'farine de blé complète',
  wholeRye: 'farine de seigle complète',
  lightRye: 'farine de seigle claire',
  spelt: 'farine d’épeautre',
  wholeSpelt: 'farine d’épeautre complète',
  barley: 'farine d’orge',
};
