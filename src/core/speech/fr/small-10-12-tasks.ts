import type * as english from '../words/small-10-12-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small1012Tasks: InTongue<typeof english.small1012Tasks> = {
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
    task: 'S’asseoir loin. Écrire quand ça sent le grillé.',
    praise: 'Tu as écrit quand ça sentait le grillé.',
  },
  drain: {
    act: 'Égoutter la garniture',
    say: 'Mouillée, la garniture peut déchirer la pâte.',
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
    say: 'La farine va jusque dans chaque rainure.',
    task: 'Fariner chaque banneton. Puis se laver les mains.',
    praise: 'Tu as fariné les bannetons.',
  },
  grease: {
    act: 'Graisser les moules',
    say: 'Les coins en ont le plus besoin.',
    task: 'Graisser chaque coin. Puis se laver les mains.',
    praise: 'Tu as graissé chaque coin.',
  },
  shelf: {
    act: 'Faire de la place au frigo',
    say: 'Il faut de l’air tout autour de chaque pain.',
    task: 'Pousser les choses légères d’un côté.',
    praise: 'Tu as poussé les choses légères.',
  },
  parchment: {
    act: 'Regarder de sa chaise',
    say: 'Un adulte coupe le papier à la taille.',
    task: 'S’asseoir loin. Lire tout haut la boîte du papier.',
    praise: 'Tu as lu la boîte.',
  },
  kettle: {
    act: 'Écouter de loin',
    say: 'Un adulte fait bouillir l’eau.',
    task: 'S’asseoir loin. Écrire le bruit qu’on entend.',
    praise: 'Tu as écrit le bruit entendu.',
  },
  fetch: {
    act: 'Voir venir le prochain pain',
    say: 'Un adulte prend le prochain pain froid.',
    task: 'Écrire combien de pains restent au froid.',
    praise: 'Tu as écrit combien restent au froid.',
  },
  rack: {
    act: 'Voir sortir la grille',
    say: 'Un adulte sort la grille.',
    task: 'S’asseoir loin. Dessiner comment tiennent les pains.',
    praise: 'Tu as dessiné comment ils tiennent.',
  },
  tidyMix: {
    act: 'Ranger la table',
    say: 'Dans l’eau froide, la pâte part seule.',
    task: 'Tremper les petits bols. Puis se laver les mains.',
    praise: 'Tu as mis les bols à tremper.',
  },
  tidyBulk: {
    act: 'Ranger la table',
    say: 'Pas de pâte dans l’évier.',
    task: 'Essuyer chaque coin. Puis se laver les mains.',
    praise: 'Tu as essuyé chaque coin.',
  },
  tidyBench: {
    act: 'Ranger la table',
    say: 'Les restes d’abord, puis le chiffon mouillé.',
    task: 'Ramasser les restes. Puis se laver les mains.',
    praise: 'Tu as ramassé les restes.',
  },
  rise45: {
    act: 'Regarder le bac',
    say: 'Un coup d’œil au repère en dit plus.',
    task: 'Lire le repère de côté.',
    praise: 'Tu as lu le repère.',
  },
  rise70: {
    act: 'Regarder le bac',
    say: 'On regarde encore grandir la pâte.',
    task: 'Dire si la pâte a encore levé.',
    praise: 'Tu as dit si elle a levé.',
  },
  rise85: {
    act: 'Regarder le bac',
    say: 'On regarde si la pâte est assez grosse.',
    task: 'Dessiner le bac et tous ses repères.',
    praise: 'Tu as dessiné les repères du bac.',
  },
};
