import type * as english from '../words/small.ts';
import type { InTongue } from '../tongue.ts';

export const small: InTongue<typeof english.small> = {
  title: 'Petites mains',
  back: 'Vue du boulanger',
  baker: 'Le boulanger',
  you: 'Toi',
  palm: 'avec toute la main',
  held: 'Un adulte tient ceci',
  raw: 'La pâte crue peut rendre malade. On n’y goûte pas, et on se lave les mains après.',
  whose: 'Quelles mains aident ?',
  off: 'Non',
};

export const smallAges: InTongue<typeof english.smallAges> = {
  '4-6': '4 à 6 ans',
  '7-9': '7 à 9 ans',
  '10-12': '10 à 12 ans',
};

export const handMark: InTongue<typeof english.handMark> = {
  title: 'Vos signes',
  detail: 'Chaque enfant en choisit un. Touchez encore pour le rendre.',
  pick: 'Choisir son signe',
  shape: 'Mettre son signe près de son pain.',
  find: 'Trouver son signe.',
};

export const handMarks: InTongue<typeof english.handMarks> = {
  star: 'Étoile',
  moon: 'Lune',
  fish: 'Pois\u00adson',
  leaf: 'Feuille',
  boat: 'Bateau',
  sun: 'Soleil',
};

export const waitPath: InTongue<typeof english.waitPath> = {
  begins: 'L’attente a commencé.',
  some: 'L’escargot est en route.',
  half: 'L’escargot est à mi-chemin.',
  most: 'L’escargot a passé la moitié.',
  near: 'L’escargot est presque arrivé.',
  there: 'L’escargot est arrivé.',
};

export const countGame: InTongue<typeof english.countGame> = {
  corners: 'Toucher un coin par pli',
  pieces: 'Toucher une fois par pâton',
  baskets: 'Toucher une fois par banneton',
  rounds: 'Toucher une fois par boule',
  nth: { first: 'Premier', second: 'Deuxième', third: 'Troisième', fourth: 'Quatrième' },
};

export const readAnswer: InTongue<typeof english.readAnswer> = {
  title: 'Pour un adulte',
  back: 'Retour',
  again: 'Pas celle-là. Lisez encore une fois.',
  shut: 'Cela suffit pour l’instant. Continuez, et réessayez plus tard.',
};

export const readings4: InTongue<typeof english.readings4> = {
  cellar: {
    text: 'Le bocal est à la cave, le moule au grenier. Le bol est dans la remise. Le torchon pend sous le porche.',
    ask: 'Qu’y a-t-il dans la remise ?',
    answers: { right: 'bol', one: 'bocal', two: 'moule', three: 'torchon' },
  },
  order: {
    text: 'On a acheté le seigle après l’avoine. L’avoine est venue après le blé, et l’orge après le seigle.',
    ask: 'Qu’a-t-on acheté en dernier ?',
    answers: { right: 'orge', one: 'seigle', two: 'avoine', three: 'blé' },
  },
  days: {
    text: 'Lundi était pour les prunes et mardi pour les figues. Jeudi était pour les poires, dimanche pour les dattes.',
    ask: 'Pour quoi était jeudi ?',
    answers: { right: 'poires', one: 'prunes', two: 'figues', three: 'dattes' },
  },
  weights: {
    text: 'Le sac brun est plus léger que le gris. Le blanc est le plus lourd. Le vert pèse moins que le brun.',
    ask: 'Quel sac est le plus léger ?',
    answers: { right: 'vert', one: 'brun', two: 'gris', three: 'blanc' },
  },
  lane: {
    text: 'Le ferry part avant le train. Le bus part après le train, et le tram après le bus.',
    ask: 'Lequel part en deuxième ?',
    answers: { right: 'train', one: 'ferry', two: 'bus', three: 'tram' },
  },
};
