import type * as english from '../words/bench.ts';
import type { InTongue } from '../tongue.ts';

export const bench: InTongue<typeof english.bench> = {
  label: 'Plan de travail',
  edge: 'Étape {step} sur {steps} : {name}',
  edgeOven: '{name}. Le four chauffe.',
  endsAt: 'à {time}',
  more: 'Plus',
  close: 'Fermer',
  thatsIt: 'C’est ça',
  key: 'Tapez d’abord un nombre',
  of: '{done} sur {of}',
  lines: 'Ce qui se pèse',
  answers: 'Réponses',
  usual: 'Normal : {range}',
  point: ',',
  care: 'Prudence',
  home: 'Au début',
  notBegun: {
    headline: 'Cette fournée n’a pas commencé',
    detail: 'Son départ a été annulé.',
    slab: 'Au début',
    then: 'pour la recommencer',
  },
  endRehearsal: 'Finir l’essai',
  brokenFormula: 'Fichier illisible : {file}.',
  only: 'Ici, seulement {range}',
};
