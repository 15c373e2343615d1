import type * as english from '../words/small-7-9-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small79Tasks: InTongue<typeof english.small79Tasks> = {
  soak: {
    act: 'Tremper les graines',
    say: 'Les graines boivent l’eau et ramollissent.',
    task: 'Mettre les graines à la cuillère. Puis se laver les mains.',
    praise: 'Tu as mis les graines à la cuillère.',
  },
  takeOut: {
    act: 'Sortir le fromage',
    say: 'Le fromage dur se réchauffe sur la table.',
    task: 'Lire le paquet. Puis se laver les mains.',
    praise: 'Tu as lu le paquet.',
  },
  toast: {
    act: 'Regarder de loin',
    say: 'Un adulte grille au four brûlant.',
    task: 'S’asseoir loin. Dire quand ça sent le grillé.',
    praise: 'Tu as dit quand ça sentait le grillé.',
  },
  drain: {
    act: 'Égoutter la garniture',
    say: 'Sèche, la garniture reste en place.',
    task: 'Compter les gouttes. Puis se laver les mains.',
    praise: 'Tu as compté les gouttes.',
  },
  cut: {
    act: 'Regarder de sa chaise',
    say: 'Un adulte tient le couteau coupant.',
    task: 'S’asseoir loin. Dessiner un petit pois à sa taille.',
    praise: 'Tu as dessiné un petit pois.',
  },
  coat: {
    act: 'Fariner la garniture',
    say: 'La farine garde la garniture en place.',
    task: 'Fariner à la cuillère. Puis se laver les mains.',
    praise: 'Tu as fariné la garniture.',
  },
  bench: {
    act: 'Mouiller la table',
    say: 'La pâte glisse sur un film d’eau.',
    task: 'Mouiller la table. Puis se laver les mains.',
    praise: 'Tu as mouillé la table.',
  },
  baskets: {
    act: 'Fariner les bannetons',
    say: 'Avec la farine, les pains ne collent pas.',
    task: 'Fariner un banneton. Puis se laver les mains.',
    praise: 'Tu as fariné un banneton.',
  },
  grease: {
    act: 'Graisser les moules',
    say: 'Le gras aide le pain à sortir.',
    task: 'Graisser chaque coin. Puis se laver les mains.',
    praise: 'Tu as graissé chaque coin.',
  },
  shelf: {
    act: 'Faire de la place au frigo',
    say: 'Il faut une étagère libre pour les pains.',
    task: 'Ôter les choses légères de l’étagère.',
    praise: 'Tu as ôté les choses légères.',
  },
  parchment: {
    act: 'Regarder de sa chaise',
    say: 'Un adulte coupe le papier à la taille.',
    task: 'S’asseoir loin. Dessiner un pain sur papier.',
    praise: 'Tu as dessiné un pain.',
  },
  kettle: {
    act: 'Écouter de loin',
    say: 'Un adulte fait bouillir l’eau.',
    task: 'S’asseoir loin. Dire quand on entend des bulles.',
    praise: 'Tu as dit quand elle bouillait.',
  },
  fetch: {
    act: 'Voir venir le prochain pain',
    say: 'Un adulte prend le prochain pain froid.',
    task: 'Dire combien de pains restent au froid.',
    praise: 'Tu as compté les pains froids.',
  },
  rack: {
    act: 'Voir sortir la grille',
    say: 'Un adulte sort la grille.',
    task: 'S’asseoir loin. Deviner combien de pains y vont.',
    praise: 'Tu as deviné combien y vont.',
  },
  tidyMix: {
    act: 'Ranger la table',
    say: 'Les saladiers trempent dans l’eau froide.',
    task: 'Tremper les cuillères. Puis se laver les mains.',
    praise: 'Tu as mis les cuillères à tremper.',
  },
  tidyBulk: {
    act: 'Ranger la table',
    say: 'Un chiffon mouillé ôte la dernière farine.',
    task: 'Essuyer chaque coin. Puis se laver les mains.',
    praise: 'Tu as essuyé chaque coin.',
  },
  tidyBench: {
    act: 'Ranger la table',
    say: 'Tous les restes partent d’abord.',
    task: 'Ramasser les restes. Puis se laver les mains.',
    praise: 'Tu as ramassé les restes.',
  },
  rise45: {
    act: 'Regarder le bac',
    say: 'Les repères montrent combien la pâte a levé.',
    task: 'Compter les repères depuis le bas.',
    praise: 'Tu as compté les repères.',
  },
  rise70: {
    act: 'Regarder le bac',
    say: 'On regarde encore grandir la pâte.',
    task: 'Regarder droit le repère. Le lire tout haut.',
    praise: 'Tu as lu le repère.',
  },
  rise85: {
    act: 'Regarder le bac',
    say: 'On regarde si la pâte est assez grosse.',
    task: 'Dessiner le bac avec tous ses repères.',
    praise: 'Tu as dessiné les repères du bac.',
  },
};
