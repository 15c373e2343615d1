import type * as english from '../words/circle-dough.ts';
import type { InTongue } from '../tongue.ts';

export const doughPage: InTongue<typeof english.doughPage> = {
  title: 'Pâte et tours',
  detail: '{date} : {loaves}.',
  none: 'Personne n’a de pain ce jour-là.',
  bread: 'Pain',
  loaves: 'Pains',
  piece: 'Pâton',
  loads: 'Tours',
  sized: '{name}, {grams}',
  troubles: 'Ce qui ne peut se cuire',
  trouble: '{name} : {words}',
  breadGone: 'demandé : {loaves}, mais le Livre ne l’a plus en liste.',
  nowhere: '{name} : rien dans cette cuisine ne le cuit.',
  bowls: 'Par sala\u00addier',
  levain: 'Levain',
  hours: 'Tours',
  slab: 'Prévoir le jour',
  then: 'heure par heure',
  next: 'Pâte suivante, {step} sur {steps}',
};

export const doughBowls: InTongue<typeof english.doughBowls> = {
  one: 'Un saladier, {grams}',
  of: 'Pour {name}.',
  together: 'Mélangé en une fois ici. Au Jour, chaque pain est une fournée à part.',
  later: 'Ajouté une fois hors du saladier',
  filling: '{name}, {loaves}',
};

export const doughLevain: InTongue<typeof english.doughLevain> = {
  title: 'Préparez {grams} de levain',
  detail: '{grams} vont dans la pâte, {keepBack} restent pour la suite.',
  line: 'À peser',
  grams: 'Un bocal',
  feed: 'Rafraîchi pour {name} : {time}, {ratio}.',
  feedPlain: 'Rafraîchi pour {name} : {time}.',
  noPlan: 'L’heure du rafraîchi viendra avec le plan du jour.',
};

export const doughLoads: InTongue<typeof english.doughLoads> = {
  title: '{loads} tours, {minutes}',
  at: 'Premier au four à {time}, dernier sorti à {until}.',
  counted: 'Compté depuis le premier enfourné.',
  bread: 'Pain',
  loads: 'Tours',
  first: 'Premier au four',
  out: 'Dernier sorti',
  cool: 'Froid',
  start: 'tout de suite',
};

export const layAsk: InTongue<typeof english.layAsk> = {
  many: 'Le Jour en prend {most} à la fois',
  manyDetail: 'Les premiers retirés sont prévus. Laissés de côté : {name}.',
  manyYes: 'Prévoir ceux-ci',
  stands: 'Un plan existe déjà',
  standsDetail: 'Prenez le nouveau, et il le remplace.',
  standsYes: 'Continuer',
  rules: 'Voyez d’abord les règles',
  rulesDetail: 'La vente à domicile a des règles locales pour {filling}. Les avez-vous vues ?',
  rulesCare: 'Votre autorité locale vous les dit.',
  rulesYes: 'C’est vu',
  notYet: 'Pas encore, continuer',
};
