import type * as english from '../words/bulk.ts';
import type { InTongue } from '../tongue.ts';
import { ALLERGENS, RAW_DOUGH } from './care.ts';

export const bulk: InTongue<typeof english.bulk> = {
  'bulk.between': {
    headline: 'Laissez lever la pâte',
    detail: 'Les mains dedans à {time}. Gardez-la couverte.',
    slab: 'Y aller',
    then: 'mains dans la pâte, {touch} sur {touches}',
    spoken: '{time} : les mains dans la pâte. Gardez-la couverte.',
  },
  'bulk.fold': {
    headline: 'Rabattez la pâte, {touch} sur {touches}',
    detail: 'Soulevez, étirez, rabattez, tournez, quatre fois. Arrêtez si elle se déchire.',
    slab: 'C’est rabattu',
    then: 'puis elle lève encore',
    spoken: '{touch} sur {touches}. Soulevez, étirez, rabattez et tournez, quatre fois.',
    care: RAW_DOUGH,
  },
  'bulk.spread': {
    headline: 'Étirez la pâte finement',
    detail: 'Sur le plan mouillé. Arrêtez où elle résiste.',
    slab: 'C’est étiré',
    then: 'puis répartissez la garniture',
    spoken: 'Étirez la pâte finement sur le plan mouillé. Arrêtez où elle résiste.',
    care: RAW_DOUGH,
  },
  'bulk.scatter': {
    headline: 'Répartissez la garniture',
    detail: 'Sèche et froide. Laissez 3 cm nus au bord.',
    slab: 'C’est réparti',
    then: 'puis roulez la pâte',
    spoken: 'Trois centimètres restent nus au bord. Répartissez la garniture.',
    care: `Fromage frais, viande, aliments cuits, ail à l’huile : jamais ici, ils se gâtent. ${ALLERGENS}`,
  },
  'bulk.roll': {
    headline: 'Roulez la pâte',
    detail: 'Pliez en trois, puis roulez. Saladier, soudure dessous.',
    slab: 'C’est roulé',
    then: 'puis elle lève encore',
    spoken: 'Roulez la pâte. Retour au saladier, soudure dessous.',
    care: RAW_DOUGH,
  },
  'bulk.proving': {
    headline: 'Laissez lever la pâte',
    detail: 'À voir à {time}. Gardez-la couverte.',
    slab: 'Regarder',
    then: 'et dites ce que vous voyez',
    spoken: '{time} : prochain coup d’œil. Laissez lever la pâte.',
  },
  'bulk.look': {
    headline: 'Regardez la pâte',
    detail: 'Dites ce que vous voyez. « Pas sûr » est une réponse.',
    slab: 'C’est vu',
    then: 'puis choisissez la suite',
    spoken: 'Regardez la pâte. Dites ce que vous voyez.',
  },
};

export const bulkLines: InTongue<typeof english.bulkLines> = {
  fillingSlows: 'La garniture froide ralentit : environ {minutes} de plus.',
};
