import type * as english from '../words/kitchen-page.ts';
import type { InTongue } from '../tongue.ts';

export const kitchenPage: InTongue<typeof english.kitchenPage> = {
  title: 'Cuisine',
  edge: 'Cuisine : réglée une fois, changée à volonté',
  places: 'Cocottes et moules',
  placesValue: '{count} par tour',
  placesDetail: 'Combien par tour de four ?',
  pots: 'Cocottes à couvercle',
  tins: 'Moules',
  stones: 'Places sur la pierre',
  made: 'En quoi sont les cocottes ?',
  pot: 'Cocotte {count}',
  notSaid: 'Pas dit',
  materials: { bareIron: 'Fonte nue', enamel: 'Émail', clay: 'Terre', glass: 'Verre' },
  notHot: 'N’enfournez à chaud dans aucune cocotte.',
  saved: 'Dernière : {date}',
  neverSaved: 'Jamais : le journal n’est qu’ici',
  promise: [
    'La tablette se tait si elle est éteinte, muette ou endormie.',
    'Gardez-la branchée : batterie vide, aucun appel.',
    'C’est une aide, pas une alarme. Réglez aussi votre téléphone.',
  ],
  promiseTitle: 'Ce qu’une tablette ne peut promettre',
};
