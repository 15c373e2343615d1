import type * as english from '../words/proof.ts';
import type { InTongue } from '../tongue.ts';

export const proof: InTongue<typeof english.proof> = {
  'proof.counter': {
    headline: 'Laissez les pains dehors',
    detail: 'Au frigo à {time}. Faites-leur de la place.',
    slab: 'Au froid',
    then: 'puis au frigo',
    spoken: '{time} : ils vont au frigo. Faites de la place.',
  },
  'proof.toFridge': {
    headline: 'Mettez les pains au frigo',
    detail: 'Frigo à {fridgeHeat} ou plus froid. Laissez de l’air entre eux.',
    slab: 'Au frigo',
    then: 'puis ils lèvent lentement',
    spoken: '{fridgeHeat} ou plus froid. Mettez les pains, de l’air entre eux.',
  },
  'proof.retard': {
    headline: 'Laissez les pains au frigo',
    detail: 'À voir à {time}.',
    slab: 'Regarder',
    then: 'et dites ce que vous voyez',
    spoken: '{time} : prochain coup d’œil. Laissez les pains au frigo.',
  },
  'proof.look': {
    headline: 'Regardez un pain froid',
    detail: 'A-t-il poussé au froid ? Le doigt vient en dernier.',
    slab: 'C’est vu',
    then: 'puis choisissez la suite',
    spoken: 'Regardez un pain froid. Dites ce que vous voyez.',
  },
  'proof.warm': {
    headline: 'Laissez lever les pains au chaud',
    detail: 'On a besoin de vous à {time}. Gardez-les couverts.',
    slab: 'Regarder',
    then: 'et appuyez du doigt',
    spoken: '{time} : on a besoin de vous. Gardez les pains couverts.',
  },
  'proof.soon': {
    headline: 'Laissez lever les pains au chaud',
    detail: 'À voir à {time}. Pendant ce temps, le four chauffe.',
    slab: 'Regarder',
    then: 'et appuyez du doigt',
    spoken: '{time} : prochain coup d’œil. Pendant ce temps, le four chauffe.',
  },
  'proof.poke': {
    headline: 'Regardez un pain tiède',
    detail: 'Doigt fariné, enfoncé de 1 cm. Regardez le creux.',
    slab: 'C’est vu',
    then: 'puis choisissez la suite',
    spoken: 'Regardez un pain tiède. Un centimètre, avec un doigt fariné.',
  },
};

export const standOutWords: InTongue<typeof english.standOutWords> = {
  'proof.warm': {
    ...proof['proof.warm'],
    headline: 'Laissez les pains dehors',
    detail: 'On a besoin de vous à {time}. Gardez-les couverts.',
    spoken: '{minutes} dehors. On a besoin de vous à {time}.',
  },
  'proof.soon': {
    ...proof['proof.soon'],
    headline: 'Laissez les pains dehors',
  },
  'proof.poke': {
    ...proof['proof.poke'],
    headline: 'Regardez un pain resté dehors',
    spoken: 'Regardez un pain resté dehors. Le creux du doigt, puis sa pousse.',
  },
};
