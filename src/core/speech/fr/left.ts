import type * as english from '../words/left.ts';
import type { InTongue } from '../tongue.ts';

export const clockAsk: InTongue<typeof english.clockAsk> = {
  care: 'L’heure de la tablette était-elle fausse ? Dites-le, et la fournée continue.',
  press: 'L’heure était fausse',
  said: 'Tout est comme à votre dernière touche. Vérifiez la pâte.',
};

export const left: InTongue<typeof english.left> = {
  levain: {
    headline: 'Jetez ce levain',
    detail: 'Il a attendu des jours. Bocal lavé à chaud, recommencez.',
    slab: 'C’est jeté',
    then: 'puis cette fournée est finie',
    spoken: 'Jetez ce levain. Il a attendu des jours.',
  },
  dough: {
    headline: 'Jetez cette pâte',
    detail: 'Elle est restée dehors trop longtemps. Ne la cuisez pas.',
    slab: 'C’est jeté',
    then: 'puis cette fournée est finie',
    spoken: 'Jetez cette pâte. Elle est restée dehors trop longtemps.',
  },
  loaves: {
    headline: 'Jetez ces pains',
    detail: 'Ils sont restés des jours au frigo. Ne les cuisez pas.',
    slab: 'Tout est jeté',
    then: 'puis cette fournée est finie',
    spoken: 'Jetez ces pains. Ils sont restés des jours au frigo.',
  },
};
