import type * as english from '../words/mix.ts';
import type { InTongue } from '../tongue.ts';
import { RAW_DOUGH, RAW_FLOUR } from './care.ts';

export const mix: InTongue<typeof english.mix> = {
  'mix.weigh': {
    headline: 'Pesez farine, eau et levain',
    detail: 'Dans un seul saladier. Remettez à zéro avant chaque ligne.',
    slab: 'Tout est pesé',
    then: 'puis mélangez à la main',
    spoken: 'Pesez farine, eau et levain. Remettez la balance à zéro avant chaque ligne.',
    care: RAW_FLOUR,
  },
  'mix.first': {
    headline: 'Mélangez : aucune farine sèche',
    detail: 'Une main mouillée, pas encore de sel. Raclez le saladier.',
    slab: 'C’est mélangé',
    then: 'puis la pâte repose',
    spoken: 'Mélangez jusqu’à ne plus voir de farine sèche. Pas encore de sel.',
    care: RAW_DOUGH,
  },
  'mix.rest': {
    headline: 'Laissez reposer la pâte',
    detail: 'Couvrez, essuyez le plan de travail. Sel à {time}.',
    slab: 'Saler',
    then: 'puis pesez le sel',
    spoken: '{time} : c’est l’heure du sel. Couvrez le saladier.',
  },
  'mix.salt': {
    headline: 'Pesez le sel et l’eau du bassinage',
    detail: 'Le sel sur la pâte d’abord, l’eau ensuite.',
    slab: 'C’est mis',
    then: 'puis incorporez',
    spoken: 'Pesez le sel et l’eau du bassinage. Le sel va d’abord.',
    care: RAW_DOUGH,
  },
  'mix.work': {
    headline: 'Incorporez le sel',
    detail: 'Pincez et tournez : plus rien ne glisse ni ne crisse.',
    slab: 'C’est incorporé',
    then: 'puis mesurez la pâte',
    spoken: 'Incorporez le sel. Pincez et tournez jusqu’à ce que plus rien ne glisse.',
    care: RAW_DOUGH,
  },
  'mix.temperature': {
    headline: 'Prenez la température de pâte',
    detail: 'La sonde au milieu. Tapez ce qu’elle montre.',
    slab: 'Taper le nombre',
    then: 'puis laissez lever',
    spoken: 'Prenez la température de pâte. La sonde au milieu, puis tapez le nombre.',
  },
};
