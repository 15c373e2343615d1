import type * as english from '../words/sound-check.ts';
import type { InTongue } from '../tongue.ts';

export const soundCheck: InTongue<typeof english.soundCheck> = {
  title: 'Essai du son',
  detail: 'Allez là où vous serez. Fermez la porte. Écoutez trois appels.',
  play: 'Jouer les appels',
  then: 'dans dix secondes',
  again: 'Les jouer encore',
  test: 'Tous les appels',
  testing: 'Chaque appel, puis son nom. Touchez n’importe où pour arrêter.',
  noAlarm: 'C’est une aide, pas une alarme. Mettez un second minuteur à chaque étape brûlante.',
  ask: 'Avez-vous entendu les trois ?',
  limits: 'Une porte fermée étouffe beaucoup. Aucune page ne peut lire le volume.',
  mute: 'Pas encore de son possible. Jouez-les encore.',
  answers: {
    yes: { label: 'Je les ai entendus', means: 'Les appels vous atteignent là' },
    no: { label: 'Pas entendus', means: 'Les appels peuvent vous échapper' },
    sightOnly: { label: 'Sans le son', means: 'Vous regardez vous-même' },
  },
  results: { yes: 'Bien entendu', no: 'Pas entendu', sightOnly: 'Sans le son' },
  means: {
    yes: 'Refaites l’essai si la porte, la tablette ou son volume change.',
    no: 'Montez le son ou ouvrez la porte. Puis jouez-les encore.',
    sightOnly: 'Regardez souvent l’écran. Les appels sonnent quand même : n’y comptez pas.',
  },
  result: '{name}, {date}',
  notDone: 'Pas encore fait',
};
