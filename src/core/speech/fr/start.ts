import type * as english from '../words/start.ts';
import type { InTongue } from '../tongue.ts';

export const start: InTongue<typeof english.start> = {
  title: 'Faire du pain',
  formula: 'Quel pain ?',
  loaves: 'Combien de pains ?',
  piece: 'Pâte par pain, {unit}',
  kitchen: 'À combien est la cuisine ?',
  kitchenUnknown: 'Je ne sais pas',
  kitchenLast: 'La dernière fois : {celsius}',
  where: 'Où en est votre pâte ?',
  whereDetail: 'Vous pouvez entrer à toute étape.',
  slab: 'Démarrer',
  then: 'vous pourrez annuler',
  checkFirst: 'd’abord un essai du son',
  rehearse: 'Essai d’abord',
  fewer: 'Un de moins',
  more: 'Un de plus',
  noFormulas: 'Pas encore de recette ici.',
  planDay: 'Prévoir un jour',
  toLog: 'Jour\u00adnal',
  cutWaits: 'pain coupé ?',
  toKitchen: 'Cuisine',
  toBook: 'Livre de recettes',
  toCircle: 'Cercle du pain',
  running: 'En cours',
};

export const bread: InTongue<typeof english.bread> = {
  label: 'Chaque pain, cuit',
  about: 'environ {grams}',
  usual: 'Comme la recette',
  ask: 'Combien pèse un pain cuit ?',
  loses: 'La cuisson ôte environ {percent} %',
  learned: 'Votre four ôte {percent} %',
  dough: '{grams} de pâte chacun',
  of: '{count} de {grams}',
};

export const joins: InTongue<typeof english.joins> = {
  'levain.feed': 'Rafraîchir',
  'levain.ripe': 'Mon levain est mûr',
  'mix.weigh': 'Je vais peser',
  'bulk.proving': 'Ma pâte est au saladier',
  'shape.divide': 'Ma pâte est à diviser',
  'shape.scoop': 'Ma pâte va au moule',
  'proof.retard': 'Mes pains sont au frigo',
  'proof.warm': 'Mes pains lèvent au chaud',
  'oven.queued': 'Mes pains sont à cuire',
};

export const readThrough: InTongue<typeof english.readThrough> = {
  title: '{name}, {loaves}',
  needs: 'Il vous faut',
  line: '{grams} {name}',
  filling: 'Garniture : {grams} {name}',
  handsOn: 'Vos mains : {minutes} en tout',
  ends: 'Pains sortis du four vers {time}',
  overnight: 'La nuit se passe au frigo.',
  load: 'Un seul tour de four',
  loads: '{loads} tours de four',
  keepBack: 'Gardez {keepBack} de levain-chef',
  unusual: 'Inhabituel, mais permis :',
};
