import type * as english from '../words/read.ts';
import type { InTongue } from '../tongue.ts';

export const read: InTongue<typeof english.read> = {
  'read.plan': {
    headline: 'Lisez en entier',
    detail: 'Voyez ce qu’il faut, et quand on a besoin de vous.',
    slab: 'C’est lu',
    then: 'puis voyez ce que vous avez',
    spoken: 'Lisez en entier. Voyez quand on a besoin de vous.',
  },
  'read.list': {
    headline: 'Vérifiez ce que vous avez',
    detail: 'Ligne par ligne. Dites ce qu’il en est vraiment.',
    slab: 'C’est fait',
    then: 'puis le rafraîchi',
    spoken: 'Vérifiez ce que vous avez. Dites pour chaque chose ce qu’il en est vraiment.',
  },
};
