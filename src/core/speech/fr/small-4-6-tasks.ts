import type * as english from '../words/small-4-6-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small46Tasks: InTongue<typeof english.small46Tasks> = {
  soak: {
    act: 'Voir mouiller les graines',
    say: 'Les graines prennent un bain.',
    task: 'Chercher les graines qui nagent.',
    praise: 'Tu as cherché les graines qui nagent.',
  },
  takeOut: {
    act: 'Voir sortir le fromage',
    say: 'Le fromage se réchauffe sur la table.',
    task: 'Dire la forme du fromage.',
    praise: 'Tu as dit la forme du fromage.',
  },
  toast: {
    act: 'Regarder de loin',
    say: 'Un adulte grille au four brûlant.',
    task: 'S’asseoir loin. Dire quand ça sent le grillé.',
    praise: 'Tu as dit quand ça sentait le grillé.',
  },
  drain: {
    act: 'Voir l’eau couler',
    say: 'L’eau coule de la garniture.',
    task: 'Compter les gouttes qu’on entend.',
    praise: 'Tu as compté les gouttes.',
  },
  cut: {
    act: 'Regarder de sa chaise',
    say: 'Un adulte tient le couteau coupant.',
    task: 'S’asseoir loin. Compter chaque coup qu’on entend.',
    praise: 'Tu as compté chaque coup.',
  },
  coat: {
    act: 'Voir fariner la garniture',
    say: 'La farine garde la garniture en place.',
    task: 'Bouger les doigts comme la neige qui tombe.',
    praise: 'Tu as fait la neige avec tes doigts.',
  },
  bench: {
    act: 'Voir mouiller la table',
    say: 'Avec l’eau, la pâte ne colle pas.',
    task: 'Apporter un torchon sec au boulanger.',
    praise: 'Tu as apporté un torchon sec.',
  },
  baskets: {
    act: 'Voir fariner les bannetons',
    say: 'Avec la farine, les pains ne collent pas.',
    task: 'Compter les bannetons en rang.',
    praise: 'Tu as compté les bannetons.',
  },
  grease: {
    act: 'Voir briller les moules',
    say: 'Le gras aide le pain à sortir.',
    task: 'Compter les coins d’un moule.',
    praise: 'Tu as compté les coins.',
  },
  shelf: {
    act: 'Faire de la place au frigo',
    say: 'Il faut une étagère libre pour les pains.',
    task: 'Montrer où les pains peuvent dormir.',
    praise: 'Tu as montré où dorment les pains.',
  },
  parchment: {
    act: 'Regarder de sa chaise',
    say: 'Un adulte coupe le papier à la taille.',
    task: 'S’asseoir loin. Dessiner un pain rond.',
    praise: 'Tu as dessiné un pain rond.',
  },
  kettle: {
    act: 'Écouter de loin',
    say: 'Un adulte fait bouillir l’eau.',
    task: 'S’asseoir loin. Guetter le bruit de l’eau.',
    praise: 'Tu as guetté le bruit de l’eau.',
  },
  fetch: {
    act: 'Voir venir le prochain pain',
    say: 'Un adulte prend le prochain pain froid.',
    task: 'Trouver un nom pour le pain.',
    praise: 'Tu as trouvé un nom.',
  },
  rack: {
    act: 'Voir sortir la grille',
    say: 'Un adulte sort la grille.',
    task: 'S’asseoir loin. Dessiner des traits comme la grille.',
    praise: 'Tu as dessiné des traits comme la grille.',
  },
  tidyMix: {
    act: 'Voir tremper les saladiers',
    say: 'Les saladiers trempent dans l’eau froide.',
    task: 'Plier un torchon propre en deux.',
    praise: 'Tu as plié un torchon.',
  },
  tidyBulk: {
    act: 'Voir nettoyer la table',
    say: 'La table collante redevient propre.',
    task: 'Chercher les taches de farine. Les montrer.',
    praise: 'Tu as montré les taches.',
  },
  tidyBench: {
    act: 'Voir nettoyer la table',
    say: 'Tous les restes partent d’abord.',
    task: 'Ranger les cuillères sèches par taille.',
    praise: 'Tu as rangé les cuillères.',
  },
  rise45: {
    act: 'Regarder le bac',
    say: 'La pâte grimpe dans le bac.',
    task: 'Trouver le repère en haut de la pâte.',
    praise: 'Tu as trouvé le repère de la pâte.',
  },
  rise70: {
    act: 'Regarder le bac',
    say: 'On regarde jusqu’où monte la pâte.',
    task: 'Compter les repères jusqu’à la pâte.',
    praise: 'Tu as compté jusqu’à la pâte.',
  },
  rise85: {
    act: 'Regarder le bac',
    say: 'On regarde si la pâte est assez grosse.',
    task: 'Dessiner jusqu’où va la pâte.',
    praise: 'Tu as dessiné jusqu’où elle allait.',
  },
};
