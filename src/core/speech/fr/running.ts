import type * as english from '../words/running.ts';
import type { InTongue } from '../tongue.ts';

const LOOK = {
  to: 'avant le coup d’œil',
  past: 'après l’heure',
  ask: '{minutes} avant le prochain coup d’œil.',
};

export const running: InTongue<typeof english.running> = {
  title: 'Autres fournées',
  line: '{name} : {stage}',
  lineTime: '{name} : {stage}, {time}',
  overdue: '{name} : {stage}, {minutes} de retard',
  none: 'Pas d’autre fournée.',
  more: 'et {count} de plus',
};

export const returnCard: InTongue<typeof english.returnCard> = {
  title: 'Pendant votre absence',
  overdue: 'En retard de {minutes} : {name}',
  nothingOverdue: 'Rien n’est en retard.',
  last: 'Fait en dernier : {name}, {time}',
  nothingDone: 'Rien de fait encore.',
  next: 'Ensuite : {name}, {time}',
  nextNow: 'Maintenant : {name}',
  close: 'C’est lu',
};

export const countdown: InTongue<typeof english.countdown> = {
  look: LOOK,
  touch: {
    to: 'avant d’y mettre les mains',
    past: 'après l’heure',
    ask: '{minutes} avant d’y mettre les mains.',
  },
  turn: {
    to: 'avant votre tour',
    past: 'après l’heure',
    ask: '{minutes} avant votre tour.',
  },
  end: { to: 'restent', past: 'de trop', ask: 'Encore {minutes}.' },
  hot: {
    to: 'avant cocotte chaude',
    past: 'après la chauffe',
    ask: '{minutes} avant que la cocotte soit chaude.',
  },
  hotPots: {
    to: 'avant cocottes chaudes',
    past: 'après la chauffe',
    ask: '{minutes} avant que les cocottes soient chaudes.',
  },
  hotStone: {
    to: 'avant pierre chaude',
    past: 'après la chauffe',
    ask: '{minutes} avant que la pierre soit chaude.',
  },
  hotOven: {
    to: 'avant four chaud',
    past: 'après la chauffe',
    ask: '{minutes} avant que le four soit chaud.',
  },
  poke: {
    to: 'avant de revoir',
    past: 'après l’heure',
    ask: '{minutes} avant de revoir.',
  },
  lid: {
    to: 'avant d’ôter le couvercle',
    past: 'après le couvercle',
    ask: '{minutes} avant d’ôter le couvercle.',
  },
  vent: {
    to: 'avant de sortir la vapeur',
    past: 'après la vapeur',
    ask: '{minutes} avant de sortir la vapeur.',
  },
  colour: LOOK,
};

export const readyWindow: InTongue<typeof english.readyWindow> = {
  now: 'maintenant {time}',
  earliest: 'au plus tôt {time}',
  likely: 'probable {time}',
  latest: 'au plus tard {time}',
  alt: 'Prêt entre {time} et {until}, sans doute {likely}.',
  spoken: 'Entre {time} et {until}. Regardez avant de vous y fier.',
  hours: 'Prêt entre {time} et {until}',
};

export const runningLines: InTongue<typeof english.runningLines> = {
  nothingRuns: 'Pas d’horloge ici : vos mains donnent le rythme.',
};
