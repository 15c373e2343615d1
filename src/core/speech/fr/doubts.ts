import type * as english from '../words/doubts.ts';
import type { InTongue } from '../tongue.ts';

export const doubts: InTongue<typeof english.doubts> = {
  kitchenUnknown: 'On ne sait pas combien il fait ici.',
  kitchenCold: 'Si froid que l’estimation est grossière.',
  kitchenHot: 'Si chaud que l’estimation est grossière.',
  tooCold: 'Trop froid pour voir une fin : réchauffez.',
  above28: 'Les pâtes si chaudes varient : regardez tôt.',
  pff: 'Avec sa part de levain, l’estimation est grossière.',
  salt: 'Avec son sel, l’estimation est grossière.',
  rye: 'Tant de seigle : l’estimation est grossière.',
  hydration: 'Pâte si ferme ou si molle : estimation grossière.',
  rise: 'Elle doit lever plus loin que ce qui est connu.',
  oddReading: 'Une mesure étrange compte ici : estimation grossière.',
  laterThanModel: 'Plus long que prévu : fiez-vous à vos yeux.',
};

export const doubtsLines: InTongue<typeof english.doubtsLines> = {
  warmPlace: 'Au chaud, à {celsius} : prêt vers {time}.',
  readyByThen: 'Ils seront sans doute prêts d’ici là.',
};
