import type * as english from '../words/tags.ts';
import type { InTongue } from '../tongue.ts';

export const tagWords: InTongue<typeof english.tagWords> = {
  best: 'Le meilleur',
  gift: 'Un cadeau',
  new: 'Premier essai',
  guests: 'Invités',
  children: 'Avec des enfants',
  market: 'Marché',
  weekday: 'Semaine',
  feast: 'Jour de fête',
  test: 'Fournée d’essai',
  rescued: 'Sauvée',
};
