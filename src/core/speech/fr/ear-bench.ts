import type * as english from '../words/ear-bench.ts';
import type { InTongue } from '../tongue.ts';

export const earBench: InTongue<typeof english.earBench> = {
  shut: 'Oreille fermée',
  opens: 'Un appui l’ouvre',
  say: 'Dites : {phrases}',
  digits: 'Dites les chiffres',
  speaks: 'Je vous entends',
  tiles: 'À la main, merci',
  lost: {
    denied: 'Écoute refusée',
    none: 'Pas de micro',
    gone: 'Micro parti',
    failed: 'Écoute en panne',
  },
  again: 'Touchez pour réessayer',
  or: '{one}, {other}',
};

export const earPhrases: InTongue<typeof english.earPhrases> = {
  done: 'c’est fait',
  takeBack: 'annule cela',
  sayAgain: 'répète cela',
  longer: 'encore combien de temps',
  hush: 'silence s’il te plaît',
  reading: 'nouvelle mesure',
  notYet: 'pas encore',
  ready: 'c’est prêt',
  showMe: 'montre-moi comment',
  lidOff: 'couvercle enlevé',
  springs: 'elle rebondit',
  slowly: 'lentement',
  stays: 'elle reste',
  yes: 'oui',
  no: 'non',
};

export const earSays: InTongue<typeof english.earSays> = {
  tiles: 'Je n’ai pas compris. À la main, merci.',
  digits: 'Dites-le chiffre par chiffre.',
  agree: 'Dites oui ou non.',
  byHand: 'Cela ne se fait qu’à la main.',
  lost: {
    denied: 'Je ne peux pas écouter ici. À la main, merci.',
    none: 'Je ne trouve pas de micro. À la main, merci.',
    gone: 'Le micro est parti. À la main, merci.',
    failed: 'Je ne peux pas écouter maintenant. À la main, merci.',
  },
};
