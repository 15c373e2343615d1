import type * as english from '../words/oven-tin.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS, RING } from './care.ts';

const HOT_TIN = 'Le moule est du fer brûlant : gants secs, enfants à 1 m.';

export const tinWords: InTongue<typeof english.tinWords> = {
  turnOn: {
    headline: 'Chauffez le four, grille en bas',
    detail: '{bakeHeat}. Les moules restent dehors tant qu’ils sont vides.',
    slab: 'Four allumé',
    then: 'puis il chauffe',
    spoken: '{bakeHeat}, grille en bas. Les moules restent dehors.',
    care: RING,
  },
  preheating: {
    headline: 'Laissez chauffer le four',
    detail: 'Chaud à {time}. Les pains restent couverts.',
    slab: 'Il est chaud',
    then: 'puis voyez le premier pain',
    spoken: '{time} : le four sera chaud. Les pains restent couverts.',
    care: 'Le four est brûlant. Les enfants restent à 1 m.',
  },
  before: {
    headline: 'Préparez tout pour le four',
    detail: 'Ligne par ligne. Dites ce qu’il en est vraiment.',
    slab: 'C’est fait',
    then: 'puis incisez le pain',
    spoken: 'Préparez tout pour le four. Les enfants, reculez.',
    care: RING,
  },
  score: {
    headline: 'Incisez le pain, ou laissez-le',
    detail: 'Un long trait. Le pain de seigle se fend seul.',
    slab: 'Incisé ou laissé',
    then: 'puis au four',
    spoken: 'Un long trait, ou aucun pour le seigle. Puis couvrez la lame.',
    care: `Lame : coupez loin de votre main, puis couvrez-la. ${RING}`,
  },
  load: {
    headline: 'Enfournez les moules',
    detail: 'Grille basse, de l’air entre les moules. Porte fermée.',
    slab: 'C’est dedans',
    then: 'appuyez, la porte fermée',
    spoken: 'Grille basse, de l’air entre les moules, porte fermée. Les enfants, reculez.',
    care: `${MITTS} ${RING}`,
  },
  open: {
    headline: 'Laissez colorer la croûte',
    detail: 'À voir à {time}. Four à {bakeHeat} ; doré, pas noir.',
    slab: 'Regarder',
    then: 'et dites ce que vous voyez',
    spoken: '{time} : prochain coup d’œil. Doré, pas noir.',
    care: `${HOT_TIN} ${BURN}`,
  },
  judge: {
    headline: 'Regardez la croûte',
    detail: 'Démoulez-en un, gants secs. Regardez les côtés.',
    slab: 'C’est vu',
    then: 'puis choisissez la suite',
    spoken: 'Regardez la croûte et les côtés. Les enfants, reculez.',
    care: `${MITTS} ${RING}`,
  },
  unload: {
    headline: 'Sortez le pain',
    detail: 'Démoulez-le sur la grille. Porte fermée.',
    slab: 'Il est sorti',
    then: 'appuyez, les mains libres',
    spoken: 'Sortez le pain, démoulez-le sur la grille. Les enfants, reculez.',
    care: `${MITTS} ${RING}`,
  },
  recover: {
    headline: 'Laissez réchauffer le four',
    detail: 'Porte fermée. Chaud à {time}.',
    slab: 'Il est chaud',
    then: 'puis voyez le prochain pain',
    spoken: '{time} : le four sera de nouveau chaud. Porte fermée.',
    care: `${HOT_TIN} ${BURN}`,
  },
  turnOff: {
    headline: 'Éteignez le four',
    detail: 'Les moules vides refroidissent sur la cuisinière, hors de portée.',
    slab: 'Four éteint',
    then: 'le dernier tour est sorti',
    spoken: 'Éteignez le four. Les moules refroidissent hors de portée.',
    care: 'Les moules restent brûlants un moment. Les enfants restent à 1 m.',
  },
};
