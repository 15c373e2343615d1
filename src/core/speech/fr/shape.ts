import type * as english from '../words/shape.ts';
import type { InTongue } from '../tongue.ts';
import { RAW_DOUGH } from './care.ts';

export const shape: InTongue<typeof english.shape> = {
  'shape.divide': {
    headline: 'Divisez à {grams} chacun',
    detail: '{loaves}. Pesez chaque pâton, les restes au milieu.',
    slab: 'Tout est divisé',
    then: 'puis boulez',
    spoken: '{loaves}, {grams} chacun. Pesez chaque pâton.',
    care: RAW_DOUGH,
  },
  'shape.preshape': {
    headline: 'Boulez chaque pâton sans serrer',
    detail: 'Peu de farine, côté lisse dessus. Gardez leur ordre.',
    slab: 'Tout est boulé',
    then: 'puis ils reposent',
    spoken: 'Boulez chaque pâton sans serrer. Le côté lisse dessus.',
    care: RAW_DOUGH,
  },
  'shape.benchRest': {
    headline: 'Laissez reposer les pâtons',
    detail: 'Couvrez-les, essuyez le plan. Façonnage à {time}.',
    slab: 'Façonner',
    then: 'le premier d’abord',
    spoken: '{time} : c’est le façonnage. Couvrez les pâtons.',
  },
  'shape.finalShape': {
    headline: 'Façonnez chaque pain',
    detail: 'Farinez, retournez, pliez, roulez serré. Pincez la soudure.',
    slab: 'Tout est façonné',
    then: 'puis en bannetons',
    spoken: 'Façonnez chaque pain. Roulez serré et pincez la soudure.',
    care: RAW_DOUGH,
  },
  'shape.basket': {
    headline: 'Mettez chaque pain en banneton',
    detail: 'Farinez bien le banneton. Soudure dessus, puis couvrez.',
    slab: 'En bannetons',
    then: 'puis ils lèvent encore',
    spoken: 'Mettez chaque pain en banneton. Soudure dessus, puis couvrez.',
    care: RAW_DOUGH,
  },
  'shape.scoop': {
    headline: 'Mettez la pâte dans les moules',
    detail: '{grams} par moule graissé. Mains mouillées, dessus lisse.',
    slab: 'Dans les moules',
    then: 'puis elle lève encore',
    spoken: '{grams} par moule graissé. Mains mouillées.',
    care: RAW_DOUGH,
  },
};

export const filledWords: InTongue<typeof english.filledWords> = {
  'shape.finalShape': 'Cette garniture sur chacun. Roulez serré, pincez la soudure.',
  'shape.scoop': 'Mélangez la garniture, puis {grams} par moule graissé.',
};

const basket = shape['shape.basket'];

export const basketWords: InTongue<typeof english.basketWords> = {
  counter: {
    ...basket,
    detail: 'Soudure dessus, couvrez. Ils attendent {minutes}, puis le frigo.',
    then: '{minutes} dehors, puis le frigo',
    spoken: '{minutes} dehors, puis le frigo. Soudure dessus, puis couvrez.',
  },
  fridge: {
    ...basket,
    detail: 'Soudure dessus, couvrez. Puis tout de suite au frigo.',
    then: 'puis tout de suite au frigo',
    spoken: 'Mettez chaque pain en banneton. Puis tout de suite au frigo.',
  },
};
