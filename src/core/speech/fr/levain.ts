import type * as english from '../words/levain.ts';
import type { InTongue } from '../tongue.ts';

const BAD = 'Rose, orange ou moisi : jetez tout.';

export const levain: InTongue<typeof english.levain> = {
  'levain.feed': {
    headline: 'Rafraîchissez le levain-chef',
    detail: 'Pesez chaque ligne dans un bocal propre, puis mélangez.',
    slab: 'C’est rafraîchi',
    then: 'puis laissez-le lever',
    spoken: 'Rafraîchissez le levain-chef. Pesez chaque ligne dans un bocal propre, puis mélangez.',
    care: `${BAD} Couvrez le bocal sans serrer, jamais fermé.`,
  },
  'levain.ripening': {
    headline: 'Laissez lever le levain',
    detail: 'À voir à {time}. Au chaud, sans y toucher.',
    slab: 'Regarder',
    then: 'et dites ce que vous voyez',
    spoken: '{time} : prochain coup d’œil. Laissez lever le levain.',
    care: 'Couvercle posé, pas serré : un bocal fermé peut éclater.',
  },
  'levain.look': {
    headline: 'Regardez le levain',
    detail: 'Dites ce que vous voyez. « Pas sûr » est une réponse.',
    slab: 'C’est vu',
    then: 'puis choisissez la suite',
    spoken: 'Regardez le levain. Dites ce que vous voyez.',
    care: BAD,
  },
  'levain.ripe': {
    headline: 'Gardez {keepBack} de levain-chef',
    detail: 'Bocal propre, couvercle posé, au frigo.',
    slab: 'C’est gardé',
    then: 'puis pesez la farine',
    spoken: '{keepBack} de levain-chef à garder. Couvercle posé, au frigo.',
    care: `${BAD} Couvrez le bocal sans serrer, jamais fermé.`,
  },
};
