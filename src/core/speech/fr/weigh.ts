import type * as english from '../words/weigh.ts';
import type { InTongue } from '../tongue.ts';
import { bulk } from './bulk.ts';

const line = (detail: string, then: string) => ({
  headline: '{grams} {name}',
  detail,
  slab: 'C’est mis',
  then,
  spoken: '{name} : {grams}.',
});

const { detail, slab, then } = bulk['bulk.scatter'];

export const weighWords: InTongue<typeof english.weighWords> = {
  feed: line('Dans le bocal propre.', 'puis la ligne suivante'),
  first: line('Dans le saladier. Balance à zéro d’abord.', 'puis la ligne suivante'),
  second: line('Sur la pâte. Balance à zéro d’abord.', 'puis la ligne suivante'),
  filling: { ...line(detail, then), slab },
  worked: {
    ...line('Répartissez bien, autant dans chaque pain.', 'puis donnez la forme'),
    spoken: '{name} : {grams}. Incorporez.',
  },
};

export const weighNames: InTongue<typeof english.weighNames> = {
  water: 'eau',
  levain: 'levain',
  salt: 'sel',
  secondWater: 'bassinage',
  seed: 'levain-chef',
};

export const weighThen: InTongue<typeof english.weighThen> = {
  next: 'puis {name}',
  last: 'c’était la dernière',
};

export const weighLines: InTongue<typeof english.weighLines> = {
  soakerWater: 'eau pour {name}',
  weighRough: 'Pour si peu, votre balance est grossière. Prenez-en une plus fine.',
};
