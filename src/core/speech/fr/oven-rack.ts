import type * as english from '../words/oven-rack.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, HOT_IRON, RING } from './care.ts';

const HOT_RACK = 'Grille brûlante : gants secs, deux mains, visage en arrière.';

export const rackWords: InTongue<typeof english.rackWords> = {
  open: {
    headline: 'Laissez finir sur la grille',
    detail: 'Sans cocotte. À voir à {time}.',
    spoken: '{time} : prochain coup d’œil. Il finit sur la grille nue.',
    care: `${HOT_IRON} ${BURN}`,
  },
  judge: {
    care: `${HOT_RACK} ${RING}`,
  },
  unload: {
    detail: 'De la grille du four à la grille froide. Porte fermée.',
    spoken: 'Ôtez le pain de la grille brûlante. Les enfants, reculez.',
    care: `${HOT_RACK} ${RING}`,
  },
};
