import type * as english from '../words/rise.ts';
import type { InTongue } from '../tongue.ts';

export const rise: InTongue<typeof english.rise> = {
  say: 'Dire cette courbe',
  bowl: 'Pousse au saladier',
  jar: 'Pousse en bocal',
  numbers: 'En tableau',
  chart: 'En courbe',
  none: 'Rien ne lève ici pour l’instant.',
  title: { dough: 'Où en est la pousse', loaf: 'Où en est le pain' },
  goal: { dough: 'but {percent}', loaf: 'prêt' },
  likely: 'probable',
  inJar: 'en bocal',
  now: 'maintenant',
  band: 'Quatre sur cinq finissent dans la bande hachurée.',
  tubMark: '{percent}',
  atLeast: '{percent} ou plus',
  jarMark: 'bocal {percent}',
  growth: { none: 'rien', little: 'un peu', grown: 'poussé', unsure: 'vu' },
  dent: { springs: 'd’un coup', slow: 'lent', stays: 'reste', unsure: 'vu' },
  table: {
    title: 'La même chose en nombres',
    time: 'Heure',
    read: 'Lu',
    likely: 'Probable',
    span: 'Entre',
  },
  span: '{least} à {most}',
  over: 'plus de {percent}',
  alt: {
    dough: 'Pousse selon l’heure. Sans doute {percent} maintenant, but {goal}. Mesures : {count}.',
    loaf: 'Avancée selon l’heure. Sans doute à {percent} de l’apprêt. Coups d’œil : {count}.',
  },
  spoken: {
    dough: '{percent} maintenant, environ. Prête de {time} à {until}.',
    loaf: '{percent} du chemin, environ. Prêt de {time} à {until}.',
    doughLong: '{percent} maintenant, environ. Prête dans environ {minutes}.',
    loafLong: '{percent} du chemin, environ. Prêt dans environ {minutes}.',
    doughThere: '{percent} maintenant, environ. Peut-être prête : regardez.',
    loafThere: '{percent} du chemin, environ. Peut-être prêt : regardez.',
  },
};
