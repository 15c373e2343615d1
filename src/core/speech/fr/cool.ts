import type * as english from '../words/cool.ts';
import type { InTongue } from '../tongue.ts';
import { RING } from './care.ts';

export const cool: InTongue<typeof english.cool> = {
  'oven.queued': {
    headline: 'Suivez le four maintenant',
    detail: 'Les pains attendent leur tour où ils sont.',
    slab: 'Au four',
    then: 'il dit la suite',
    spoken: 'Suivez le four maintenant. Les pains attendent où ils sont.',
  },
  'cool.cooling': {
    headline: 'Laissez ressuer les pains',
    detail: 'Sur une grille jusqu’à {time}. Pas de sac à chaud.',
    slab: 'Ils sont froids',
    then: 'puis remettez-les',
    spoken: '{time} : ils devraient être froids. Laissez-les sur une grille.',
    care: 'Pains chauds et cocottes brûlent : les enfants, reculez. En sac sous {bagHeat}.',
  },
  'cool.handOver': {
    headline: 'Étiquetez les pains, remettez-les',
    detail: 'Nom, date et contenu. Sac tiède : laissez-le ouvert.',
    slab: 'C’est remis',
    then: 'puis une note',
    spoken: 'Étiquetez les pains, puis remettez-les. Sac tiède : laissez-le ouvert.',
    care: 'Nommez chaque allergène ; blé et seigle ne sont pas sans gluten. Vente : voyez les règles locales.',
  },
  'cool.note': {
    headline: 'Notez le résultat',
    detail: 'Une ligne pour la prochaine fournée.',
    slab: 'C’est noté',
    then: 'et cette fournée est finie',
    spoken: 'Notez le résultat. Une ligne pour la prochaine fournée.',
  },
  'rescue.tray': {
    headline: 'Cuisez à plat sur une plaque',
    detail: 'Autre but : four à {trayHeat}. Étalez sur plaque huilée, 20 à 25 minutes.',
    slab: 'Plaque sortie',
    then: 'puis une note',
    spoken: '{trayHeat} maintenant. Plaque huilée, vingt à vingt-cinq minutes.',
    care: `Pâte nature : sans souci ; garniture douteuse : jetez. ${RING}`,
  },
  done: {
    headline: 'Lavez tout : la fournée est finie',
    detail: 'Elle est au journal, avec votre note.',
    slab: 'Au début',
    then: 'préparez la prochaine',
    spoken: 'Cette fournée est finie. Elle est au journal.',
  },
  ended: {
    headline: 'Rangez tout : la fournée s’arrête',
    detail: 'Ce que vous avez fait est au journal.',
    slab: 'Au début',
    then: 'préparez la prochaine',
    spoken: 'Cette fournée s’arrête. Ce que vous avez fait est au journal.',
  },
};

export const denseCooling: InTongue<typeof english.denseCooling> = {
  ...cool['cool.cooling'],
  detail: 'Sur une grille jusqu’à {time}. Le seigle dense prend en 12 à 24 heures.',
  then: 'puis remettez-les',
  spoken: '{time} : ils devraient être pris. Le seigle dense demande douze à vingt-quatre heures.',
};
