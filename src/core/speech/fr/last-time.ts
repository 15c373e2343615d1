import type * as english from '../words/last-time.ts';
import type { InTongue } from '../tongue.ts';

export const lastTimeLooked: InTongue<typeof english.lastTimeLooked> = {
  well: 'La dernière fois, c’était un beau pain.',
  under: 'La dernière fois, il semblait manquer d’apprêt.',
  short: 'La dernière fois, il semblait manquer un peu de pousse.',
  over: 'La dernière fois, il semblait trop poussé.',
  cutHot: 'La dernière fois, il semblait coupé tiède.',
  notBaked: 'La dernière fois, il ne semblait pas tout à fait cuit.',
  skin: 'La dernière fois, sa peau semblait faible ou sèche.',
  benchFlour: 'La dernière fois, il avait des traînées de farine.',
  ovenLow: 'La dernière fois, le four semblait trop bas.',
  ovenHot: 'La dernière fois, le four semblait trop chaud.',
  wetFilling: 'La dernière fois, la garniture semblait trop mouillée.',
};

export const lastTimeNoted: InTongue<typeof english.lastTimeNoted> = {
  good: 'La dernière fois, c’était bon.',
  under: 'La dernière fois, il manquait d’apprêt.',
  over: 'La dernière fois, il avait trop poussé.',
  dark: 'La dernière fois, la croûte était trop foncée.',
  pale: 'La dernière fois, la croûte était trop pâle.',
};

export const thisTime: InTongue<typeof english.thisTime> = {
  warmerDough: 'Cette fois, partez d’une pâte plus chaude.',
  longerBulk: 'Cette fois, attendez le bord bombé.',
  longerProof: 'Cette fois, laissez lever les pains un peu plus longtemps.',
  shorterBulk: 'Cette fois, arrêtez le pointage un peu plus tôt.',
  coolerDough: 'Cette fois, partez d’une pâte plus fraîche.',
  shorterCold: 'Cette fois, laissez-le moins longtemps au froid.',
  coolLonger: 'Cette fois, laissez-le refroidir deux heures avant de couper.',
  bakeLonger: 'Cette fois, cuisez-le cinq à dix minutes de plus.',
  tighterSkin: 'Cette fois, façonnez un peu plus serré.',
  coverSkin: 'Cette fois, gardez le pain couvert.',
  lessFlour: 'Cette fois, mettez moins de farine sur le plan.',
  hotterOven: 'Cette fois, chauffez le four plus longtemps.',
  coolerOven: 'Cette fois, réglez le four un peu plus bas.',
  trayBelow: 'Cette fois, mettez une plaque à l’étage du dessous.',
  drierFilling: 'Cette fois, égouttez et séchez bien la garniture.',
};

export const lastTimeLines: InTongue<typeof english.lastTimeLines> = {
  theSameWay: 'Faites de même.',
  ownLastTime: 'La dernière fois : « {words} »',
};
