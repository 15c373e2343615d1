import type * as english from '../words/ways.ts';
import type { InTongue } from '../tongue.ts';

export const ways: InTongue<typeof english.ways> = {
  title: 'Affichage',
  theme: { name: 'Page', light: 'Claire', dark: 'Sombre' },
  night: { name: 'Lumière basse', off: 'Jamais', hours: 'La nuit', dim: 'Tout de suite' },
  hands: { name: 'Grosse touche côté', right: 'Main droite', left: 'Main gauche' },
  text: { name: 'Texte', plain: 'Nor\u00admal', bigger: 'Plus grand' },
  clock: { name: 'Heure', '24': '24 h', '12': '12 h' },
  heat: { name: 'Chaleur' },
  weight: { name: 'Poids' },
  tongue: { name: 'Langue', en: 'English', fr: 'Français', de: 'Deutsch' },
  card: 'Par carte',
};

export const tongueVoice: InTongue<typeof english.tongueVoice> = {
  own: 'La voix de cette tablette parle français.',
  none: 'Pas de voix française sur cette tablette : elle parle anglais.',
};

export const bankCard: InTongue<typeof english.bankCard> = {
  title: 'Tenez une carte bancaire à l’écran',
  detail: 'Réglez le cadre à la largeur de la carte. Puis gardez.',
  frame: 'Un cadre à la taille d’une carte bancaire',
  bigger: 'Plus grand',
  smaller: 'Plus petit',
  bitBigger: 'Un peu plus grand',
  bitSmaller: 'Un peu plus petit',
  save: 'C’est juste : garder',
  usual: 'Taille normale',
};
