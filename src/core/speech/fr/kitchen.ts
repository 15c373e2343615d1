import type * as english from '../words/kitchen.ts';
import type { InTongue } from '../tongue.ts';

export const ear: InTongue<typeof english.ear> = {
  sound: {
    armed: 'Son actif',
    locked: 'Tapez pour le son',
    lost: 'Son perdu : touchez',
    unavailable: 'Pas de son ici',
  },
  mute: { locked: 'Son coupé', unavailable: 'Pas de son' },
  awake: {
    held: 'L’écran reste allumé',
    lost: 'L’écran peut s’éteindre',
    unavailable: 'Gardez l’écran allumé vous-même',
  },
  unheard: 'Son coupé : touchez',
  untilTouch: 'Pas de son avant que vous touchiez',
};

export const noPromise: InTongue<typeof english.noPromise> = {
  title: 'Ne vous fiez pas à cette alarme',
  text: 'Elle peut se taire si la tablette est verrouillée, au son trop bas ou sur une autre appli. Mettez un second minuteur à chaque étape brûlante.',
  agree: 'Je mets un second minuteur',
};

export const night: InTongue<typeof english.night> = {
  plug: 'Branchez-moi.',
  phone: 'Réglez votre téléphone sur {time}.',
  why: 'Une page ne peut pas réveiller une tablette qui dort.',
};

export const twoPages: InTongue<typeof english.twoPages> = {
  headline: 'Une autre page tient la cuisine',
  detail: 'Celle-ci ne fait que la montrer.',
  free: 'L’autre page est partie.',
  take: 'Prendre la cuisine ici',
};

export const update: InTongue<typeof english.update> = {
  offer: 'Une nouvelle version est là.',
  detail: 'Votre fournée continue où elle en est.',
  take: 'La prendre',
  later: 'Plus tard',
};

export const coolLoaf: InTongue<typeof english.coolLoaf> = {
  lost: 'Perdu à la cuisson : {grams}, soit {percent} %. Sac tiède : laissez-le ouvert.',
};

export const divideAdvice: InTongue<typeof english.divideAdvice> = {
  heavy: {
    text: '{grams} de trop. Passez-les au pâton suivant.',
    spoken: '{grams} de trop. Passez-les au pâton suivant.',
  },
  light: {
    text: 'Il manque {grams}. Prenez au pâton suivant.',
    spoken: 'Il manque {grams}. Prenez au pâton suivant.',
  },
  right: {
    text: '{grams} : c’est bon. Mettez-le de côté.',
    spoken: '{grams}, c’est bon. Mettez-le de côté.',
  },
};
