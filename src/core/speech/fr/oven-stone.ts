import type * as english from '../words/oven-stone.ts';
import type { InTongue } from '../tongue.ts';
import { BURN, MITTS, RING, STEAM } from './care.ts';

const HOT_STONE = 'Pierre et plaque restent brûlantes : les enfants restent à 1 m.';

export const stoneWords: InTongue<typeof english.stoneWords> = {
  turnOn: {
    headline: 'Chauffez four, pierre et plaque',
    detail: '{potHeat}, ou le plus chaud possible. Plaque vide en bas.',
    slab: 'Four allumé',
    then: 'puis la pierre chauffe',
    spoken: '{potHeat}. La pierre dedans, une plaque vide dessous.',
    care: `Souvent le papier cuisson ne tient que {parchmentHeat}. ${RING}`,
  },
  preheating: {
    headline: 'Laissez chauffer la pierre',
    detail: 'Chaude à {time}. Les pains restent où ils sont.',
    slab: 'Elle est chaude',
    then: 'puis voyez le premier pain',
    spoken: '{time} : la pierre sera chaude. Les pains restent où ils sont.',
    care: 'Le four est brûlant. Les enfants restent à 1 m.',
  },
  before: {
    headline: 'Préparez tout pour la pierre',
    detail: 'Ligne par ligne. Dites ce qu’il en est vraiment.',
    slab: 'C’est fait',
    then: 'puis incisez le pain',
    spoken: 'Préparez tout pour la pierre chaude. Les enfants, reculez.',
    care: RING,
  },
  score: {
    headline: 'Incisez le pain',
    detail: 'Renversez-le sur une planche farinée. Un trait vif.',
    slab: 'C’est incisé',
    then: 'puis sur la pierre',
    spoken: 'Un centimètre de profond, un trait vif. Puis couvrez la lame.',
    care: `Lame : coupez loin de votre main, puis couvrez-la. ${RING}`,
  },
  load: {
    headline: 'Enfournez, eau dans la plaque',
    detail: 'Glissez-le. Eau bouillante dans la plaque, porte fermée.',
    slab: 'C’est dedans',
    then: 'appuyez, la porte fermée',
    spoken: 'Glissez-le, eau bouillante dans la plaque, porte fermée. Les enfants, reculez.',
    care: `${STEAM} ${RING}`,
  },
  open: {
    headline: 'Laissez colorer la croûte',
    detail: 'À voir à {time}. Four à {bakeHeat} ; doré, pas noir.',
    slab: 'Regarder',
    then: 'et dites ce que vous voyez',
    spoken: '{time} : prochain coup d’œil. Doré, pas noir.',
    care: `${HOT_STONE} ${BURN}`,
  },
  unload: {
    headline: 'Sortez le pain',
    detail: 'De la pierre droit sur la grille. Porte fermée.',
    slab: 'Il est sorti',
    then: 'appuyez, les mains libres',
    spoken: 'Sortez le pain, droit sur la grille. Les enfants, reculez.',
    care: `${MITTS} ${RING}`,
  },
  recover: {
    headline: 'Laissez réchauffer la pierre',
    detail: 'Plaque vide remise. Chaude à {time}.',
    slab: 'Elle est chaude',
    then: 'puis voyez le prochain pain',
    spoken: '{time} : la pierre sera de nouveau chaude. Plaque vide dedans.',
    care: `${HOT_STONE} ${BURN}`,
  },
  turnOff: {
    headline: 'Éteignez le four',
    detail: 'Pierre et plaque restent dedans pour refroidir.',
    slab: 'Four éteint',
    then: 'le dernier tour est sorti',
    spoken: 'Éteignez le four. Pierre et plaque restent dedans pour refroidir.',
    care: 'La pierre reste brûlante des heures. Les enfants restent à 1 m.',
  },
};
