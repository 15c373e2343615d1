import type * as english from '../words/gate.ts';
import type { InTongue } from '../tongue.ts';

export const gate: InTongue<typeof english.gate> = {
  grownUp: 'C’est pour un adulte',
  standBack: 'Reculez',
  ring: 'Les enfants restent à 1 m.',
  hold: 'Tenir pour ouvrir',
  holding: 'Tenez encore',
  twoTaps: 'Ou touchez deux fois',
  first: 'D’abord ici',
  second: 'puis ici',
  spoken: 'C’est pour un adulte. Les enfants, reculez.',
  bothHands: 'Deux mains libres ? Les enfants, reculez.',
};

export const gateHazards: InTongue<typeof english.gateHazards> = {
  hot: 'Fonte brûlante et vapeur',
  blade: 'Lame coupante',
  machine: 'Four brûlant',
};

export const childTasks: InTongue<typeof english.childTasks> = {
  none: ['Dessiner la pâte comme elle est.', 'Lire le grand nombre tout haut.'],
  hot: [
    'S’asseoir sur la chaise au loin. Compter jusqu’à 20.',
    'Dessiner le pain. Sera-t-il bien doré ?',
    'Appeler quand la porte est fermée.',
  ],
  blade: ['Dessiner la coupe à faire.', 'S’asseoir. Compter les bannetons secs.'],
  machine: ['S’asseoir. Surveiller la lampe du four.', 'Dessiner le four, porte fermée.'],
  heavy: ['Tenir la porte grande ouverte.', 'Faire de la place sur la table.'],
  raw: [
    'Appuyer sur le gros bouton pour le boulanger.',
    'Lire tout haut ce que montre la balance.',
  ],
};
