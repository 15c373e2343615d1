import type * as english from '../words/small.ts';
import type { InTongue } from '../tongue.ts';

export const small: InTongue<typeof english.small> = {
  title: 'Petites mains',
  back: 'Vue des grands',
  baker: 'Les grands',
  you: 'Toi',
  palm: 'avec toute la main',
  held: 'Un adulte tient ici',
  raw: 'La pâte crue peut rendre malade. On n’y goûte pas, puis on se lave les mains.',
  whose: 'Quelles mains aident ?',
};

export const smallAges: InTongue<typeof english.smallAges> = {
  '4-6': 'De 4 à 6 ans',
  '7-9': 'De 7 à 9 ans',
  '10-12': 'De 10 à 12 ans',
};

export const handMark: InTongue<typeof english.handMark> = {
  title: 'Vos signes',
  detail: 'Chaque enfant en choisit un. Un autre appui le remet.',
  pick: 'Choisis ton signe',
  shape: 'Pose ton signe près de ton pain.',
  find: 'Trouve ton signe.',
};

export const handMarks: InTongue<typeof english.handMarks> = {
  star: 'Étoile',
  moon: 'Lune',
  fish: 'Poisson',
  leaf: 'Feuille',
  boat: 'Bateau',
  sun: 'Soleil',
};

export const waitPath: InTongue<typeof english.waitPath> = {
  begins: 'L’attente commence.',
  some: 'L’escargot est en route.',
  half: 'L’escargot est à mi-chemin.',
  most: 'L’escargot a passé le milieu.',
  near: 'L’escargot y est presque.',
  there: 'L’escargot est arrivé.',
};

export const countGame: InTongue<typeof english.countGame> = {
  corners: 'Touche un coin à chaque rabat',
  pieces: 'Touche pour chaque pâton',
  baskets: 'Touche pour chaque banneton',
  rounds: 'Touche pour chaque boule',
  nth: {
    first: 'Premier',
    second: 'Deuxième',
    third: 'Troisième',
    fourth: 'Quatrième',
  },
};

export const readAnswer: InTongue<typeof english.readAnswer> = {
  title: 'Pour un adulte',
  back: 'Retour',
  again: 'Ce n’est pas cela. Lisez encore une fois.',
  shut: 'C’est assez pour l’instant. Continuez, et essayez plus tard.',
};

export const readings4: InTongue<typeof english.readings4> = {
  cellar: {
    text: 'Le pot est à la cave, la boîte au grenier. Le bol est au hangar. Le linge pend au porche.',
    ask: 'Qu’est-ce qui est au hangar ?',
    answers: {
      right: 'bol',
      one: 'pot',
      two: 'boîte',
      three: 'linge',
    },
  },
  order: {
    text: 'Le seigle fut acheté après l’avoine. L’avoine vint après le blé, et l’orge après le seigle.',
    ask: 'Qu’a-t-on acheté en dernier ?',
    answers: {
      right: 'orge',
      one: 'seigle',
      two: 'avoine',
      three: 'blé',
    },
  },
  days: {
    text: 'Lundi, il y avait des prunes et mardi des figues. Jeudi, des poires et dimanche, des dattes.',
    ask: 'Qu’y avait-il jeudi ?',
    answers: {
      right: 'poires',
      one: 'prunes',
      two: 'figues',
      three: 'dattes',
    },
  },
  weights: {
    text: 'Le sac brun est plus léger que le gris. Le blanc est le plus lourd. Le vert pèse moins que le brun.',
    ask: 'Quel sac est le plus léger ?',
    answers: {
      right: 'vert',
      one: 'brun',
      two: 'gris',
      three: 'blanc',
    },
  },
  lane: {
    text: 'Le bac part avant le train. Le bus part après le train, et le tram après le bus.',
    ask: 'Lequel part en deuxième ?',
    answers: {
      right: 'train',
      one: 'bac',
      two: 'bus',
      three: 'tram',
    },
  },
};
