import type * as english from '../words/ear-bench.ts';
import type { InTongue } from '../tongue.ts';

export const earBench: InTongue<typeof english.earBench> = {
  shut: 'Oreille fermée',
  say: '« {words} »',
  digits: 'Dites les chiffres',
  speaks: 'Je vous entends',
  tiles: 'À la main, merci',
  short: { open: 'Ouverte', shut: 'Fermée', tiles: 'Appui', lost: 'Essai' },
  lost: {
    denied: 'Micro refusé : ici',
    none: 'Pas de micro : ici',
    gone: 'Micro parti : ici',
    failed: 'Micro muet : ici',
  },
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
