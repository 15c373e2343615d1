import type * as english from '../words/oven-many.ts';
import type { InTongue } from '../tongue.ts';

const OUT = { headline: 'Sortez les pains', slab: 'Tous sont sortis' };
const SCORED = { headline: 'Incisez les pains', slab: 'Tous sont incisés' };

export const manyWords: InTongue<typeof english.manyWords> = {
  pot: {},
  stone: {
    score: { ...SCORED, detail: 'Renversez chacun sur une planche farinée. Un trait vif.' },
    load: {
      detail: 'Glissez-les. Eau bouillante dans la plaque, porte fermée.',
      slab: 'Tous sont dedans',
      spoken: 'Glissez-les, eau bouillante dans la plaque, porte fermée. Les enfants, reculez.',
    },
    unload: {
      ...OUT,
      detail: 'De la pierre droit sur la grille. Porte fermée.',
      spoken: 'Sortez les pains, droit sur la grille. Les enfants, reculez.',
    },
  },
  tin: {
    score: {
      headline: 'Incisez les pains, ou laissez-les',
      detail: 'Un long trait chacun. Le seigle se fend tout seul.',
    },
    load: { slab: 'Tous sont dedans' },
    unload: {
      ...OUT,
      detail: 'Démoulez chacun sur la grille. Porte fermée.',
      spoken: 'Sortez les pains, démoulez chacun sur la grille. Les enfants, reculez.',
    },
  },
};

export const potsWords: InTongue<typeof english.potsWords> = {
  turnOn: {
    headline: 'Chauffez four, cocottes et couvercles',
    then: 'puis les cocottes chauffent',
    spoken: '{potHeat}. Toutes les cocottes et couvercles dedans.',
  },
  preheating: {
    headline: 'Laissez chauffer les cocottes',
    spoken: '{time} : les cocottes seront chaudes. Les pains restent où ils sont.',
  },
  turnOff: {
    detail: 'Les cocottes restent dedans pour refroidir.',
    spoken: 'Éteignez le four. Les cocottes restent dedans pour refroidir.',
  },
};
