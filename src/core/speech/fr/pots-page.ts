import type * as english from '../words/pots-page.ts';
import type { InTongue } from '../tongue.ts';

export const potsPage: InTongue<typeof english.potsPage> = {
  title: 'Cocottes',
  say: 'Dire cette courbe',
  later: 'Voir plus tard',
  back: 'Retour à maintenant',
  table: 'En tableau',
  chart: 'En courbe',
  queue: 'Pains qui attendent',
  aPotIsOut: 'Une cocotte en moins',
  backToPots: 'Retour aux cocottes',
  none: 'Aucune cocotte ne sert en ce moment.',
  one: 'La cocotte',
  last: 'Sortie du dernier pain : {time}. En sac dès {until}.',
  spoken: '{time} : le dernier pain est sorti. {until} : il peut aller en sac.',
  spokenLong: '{minutes}, environ, avant la sortie du dernier pain.',
  now: 'maintenant {time}',
  lid: 'couvercle ôté',
  out: 'sorti',
  more: { one: 'encore 1 jusqu’à {time}', many: 'encore {count} jusqu’à {time}' },
  noMore: 'aucun autre pain',
  due: { lid: 'couvercle à ôter', out: 'à voir maintenant' },
  reheats: 'chaude à {time}',
  dropped: 'retirée après ce pain',
  alt: 'Les cocottes selon l’heure. {count} cocottes, {loaves} à sortir, le dernier à {time}.',
  loaf: 'Pain {load}',
  loafOf: '{bake}, pain {load}',
  next: {
    lid: '{pot} : couvercle {time}',
    colour: '{pot} : sortir {time}',
    hot: '{pot} : chaude {time}',
  },
  nextNow: {
    lift: '{pot} : couvercle à ôter',
    judge: '{pot} : à voir',
    unload: '{pot} : à sortir',
  },
  slow: 'Le pain {load} est lent. Il passe en dernier.',
  columns: { loaf: 'Pain', load: 'Entrée', lid: 'Couvercle', out: 'Sortie' },
};

export const queuePage: InTongue<typeof english.queuePage> = {
  title: 'Pains qui attendent',
  none: 'Aucun pain n’attend. Tous sont entrés, ou sortis.',
  ask: 'Touchez un pain pour changer son tour.',
  next: 'entre ensuite',
  at: 'entre à {time}',
  first: 'premier : entre à {time}',
  later: 'lent, dernier : entre à {time}',
  reason: {
    sluggish: 'Lent : il vient en dernier.',
    tooBig: 'Il ne va que dans certaines cocottes.',
    standsOut: 'Il reste dehors jusque-là.',
  },
  bakeFirst: 'Cuire celui-ci d’abord',
  leave: 'Le laisser pour plus tard',
  stays: 'Laisser comme c’est',
  looked: 'Un pain déjà vérifié passe d’abord. Enfournez-le, ou annulez cela.',
};

export const potOutPage: InTongue<typeof english.potOutPage> = {
  title: 'Quelle cocotte en moins ?',
  said: 'Le pain qui y est cuit encore. Aucun autre n’y va.',
  one: 'En moins : {pot}',
  ask: 'Ne plus rien cuire dans {pot} ?',
  yes: 'Oui, en moins',
  no: 'Non, elle reste',
  last: 'C’est la dernière cocotte. Elle reste : des pains l’attendent.',
};
