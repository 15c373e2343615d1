import type * as english from '../words/log-list.ts';
import type { InTongue } from '../tongue.ts';

export const logList: InTongue<typeof english.logList> = {
  one: '1 four\u00adnée',
  many: '{count} fournées',
  some: '{n} fournées sur {count}',
  none: 'Rien de cuit encore',
  noneDetail: 'Chaque fournée vient ici seule, dès sa première touche.',
  hidden: 'Toutes les fournées sont cachées',
  hiddenDetail: 'Touchez Chercher pour les revoir. Rien n’en est perdu.',
  nothing: 'Aucune fournée n’est ainsi',
  nothingDetail: 'Essayez moins de lettres, ou montrez tout.',
  list: 'Fournées',
  search: 'Recherche',
  newer: 'Plus récent',
  older: 'Plus ancien',
  find: 'Cher\u00ADcher',
  showAll: 'Tout voir',
  mine: 'Toutes mes fournées',
  loaf: '1 pain',
  loaves: '{count} pains',
  hiddenOne: 'Cachée',
};

export const logFind: InTongue<typeof english.logFind> = {
  title: 'Quelles fournées ?',
  month: 'Mois',
  formula: 'Pain',
  tag: 'Étiquette',
  turned: 'Le résultat',
  hidden: 'Fournées cachées',
  shown: 'Montrées',
  notShown: 'Pas montrées',
  any: 'Toutes',
  more: 'Plus',
  first: 'Les premières',
  whichMonth: 'Quel mois ?',
  whichFormula: 'Quel pain ?',
  whichTag: 'Quelle étiquette ?',
  whichTurned: 'Quel résultat ?',
};

export const turnedWords: InTongue<typeof english.turnedWords> = {
  good: 'Bon',
  under: 'Pas assez',
  over: 'Trop',
  dark: 'Foncé',
  pale: 'Pâle',
  done: 'Fini',
  early: 'Tôt',
  open: 'En cours',
};

export const turnedChoices: InTongue<typeof english.turnedChoices> = {
  good: 'Bon',
  under: 'Manque d’apprêt',
  over: 'Trop poussé',
  dark: 'Croûte trop foncée',
  pale: 'Croûte trop pâle',
  done: 'Rien de dit',
  early: 'Arrêtée avant la fin',
  open: 'Encore en cours',
};
