import type * as english from '../words/bowls.ts';
import type { InTongue } from '../tongue.ts';

export const bowlShares: InTongue<typeof english.bowlShares> = {
  each: '{bowls} saladiers, {grams} chacun.',
  about: '{bowls} saladiers, environ {grams} chacun.',
};

export const bowlClock: InTongue<typeof english.bowlClock> = {
  later: 'Saladier {bowl} : {minutes} plus tard.',
  at: 'Saladier {bowl} : {minutes} plus tard, à {time}.',
};

export const bowlWeigh: InTongue<typeof english.bowlWeigh> = {
  first: 'Dans {bowls} saladiers. Balance à zéro pour chacun.',
  second: 'Sur {bowls} pâtes. Balance à zéro pour chacune.',
  spoken: '{name} : {grams}. Dans chacun des {bowls} saladiers.',
  more: 'Encore {grams} dans le saladier {bowl}.',
};

export const bowlPage: InTongue<typeof english.bowlPage> = {
  press: 'Par saladier',
  title: 'Par sala\u00addier',
  line: 'À peser',
  bowl: 'Saladier {bowl}',
  each: 'Saladiers',
  all: 'Le tout',
  together: 'Ensemble',
  needs: '{grams} {name} : {shares}',
};
