import type * as english from '../words/timers.ts';
import type { InTongue } from '../tongue.ts';

export const timerWords: InTongue<typeof english.timerWords> = {
  nuts: {
    name: 'Noix au four',
    short: 'Noix',
    subject: 'les noix au four',
    care: 'La plaque brûle : gants secs, enfants à 1 m.',
  },
  inOven: {
    name: 'Autre chose au four',
    short: 'Four',
    subject: 'quelque chose au four',
    care: 'C’est brûlant : gants secs, enfants à 1 m.',
  },
  kettle: {
    name: 'Bouilloire',
    short: 'Bouilloire',
    subject: 'la bouilloire',
    care: 'Eau bouillante : un adulte verse. Enfants à 1 m.',
  },
  other: { name: 'Autre chose', short: 'Minuteur', subject: 'un de vos minuteurs' },
};

export const timer: InTongue<typeof english.timer> = {
  title: 'Minuteur',
  minutes: 'Tapez combien de minutes',
  ask: 'Jusqu’à {time} : touchez pour quoi',
  names: 'Pour quoi',
  unit: 'min',
  hint: 'Jusqu’à 999 minutes',
  began: '{name} : {minutes}, jusqu’à {time}.',
  full: 'Aucun autre minuteur possible. Arrêtez-en un d’abord.',
  over: '{name} : c’est l’heure',
  said: '{name} : c’est l’heure.',
  ended: 'Il a fini à {time}.',
  stop: 'L’arrêter',
  stopThen: 'puis reprenez où vous étiez',
  stopOne: 'Arrêter : {name}, {time}',
  line: '{time} {name}',
  running: 'Minuteurs : {lines}',
};
