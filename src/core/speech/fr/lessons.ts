import type * as english from '../words/lessons.ts';
import type { InTongue } from '../tongue.ts';

export const lessons: InTongue<typeof english.lessons> = {
  'read.plan': {
    title: 'Pourquoi tout lire ?',
    why: 'Le pain prend de longues heures, mais peu de minutes de vos mains. Sachez quand il en faut.',
  },
  'read.list': {
    title: 'Pourquoi tout préparer ?',
    why: 'Une fois les mains dans la pâte, on ne va plus rien chercher.',
  },
  'levain.feed': {
    title: 'Pourquoi rafraîchir ?',
    why: 'Ses levures soulèvent le pain. Nourries de farine et d’eau, elles prennent des forces.',
    word: { name: 'Levain', means: 'le levain-chef rafraîchi qui va dans la pâte' },
  },
  'levain.ripening': {
    title: 'Pourquoi l’attendre ?',
    why: 'Trop jeune, il soulève peu ; trop vieux, il n’a plus rien à donner.',
    word: { name: 'Mûr', means: 'au plus fort, juste avant de retomber' },
    signs: {
      levainRising: { name: 'Il a levé', means: 'Il est bien au-dessus de son repère.' },
      levainRipe: { name: 'Bombé, des bulles', means: 'Un dessus rond, et des bulles partout.' },
    },
  },
  'levain.ripe': {
    title: 'Pourquoi en garder ?',
    why: 'Une cuillerée gardée est le levain-chef de votre prochain pain.',
  },
  'mix.weigh': {
    title: 'Pourquoi tout peser ?',
    why: 'Une tasse de farine n’est jamais deux fois la même. Une balance, si.',
  },
  'mix.first': {
    title: 'Pourquoi sans sel ?',
    why: 'La farine boit mieux l’eau avant le sel.',
  },
  'mix.rest': {
    title: 'Pourquoi laisser reposer ?',
    why: 'La farine mouillée se lie toute seule. Vos mains ont moins à faire.',
    word: { name: 'Autolyse', means: 'farine et eau laissées seules pour se lier' },
  },
  'mix.salt': {
    title: 'Pourquoi le sel maintenant ?',
    why: 'Le sel donne du goût et une pâte ferme. Il ralentit aussi la pousse.',
    word: { name: 'Bassinage', means: 'un peu d’eau gardée pour ce moment' },
  },
  'mix.work': {
    title: 'Pourquoi l’incorporer ?',
    why: 'Le sel à un seul endroit manque au reste de la pâte.',
  },
  'mix.temperature': {
    title: 'Pourquoi sa température ?',
    why: 'Une pâte chaude lève vite, une fraîche lentement. Toutes les heures ici viennent de ce nombre.',
  },
  'bulk.between': {
    title: 'Pourquoi lever en masse ?',
    why: 'Beaucoup de pâte ensemble garde sa chaleur, et mûrit partout pareil.',
    word: { name: 'Pointage', means: 'la première pousse, toute la pâte dans un bac' },
  },
  'bulk.fold': {
    title: 'Pourquoi des rabats ?',
    why: 'Chaque rabat lui donne de la force : elle garde son gaz.',
    word: { name: 'Rabat', means: 'soulever un côté, l’étirer, le rabattre' },
  },
  'bulk.spread': {
    title: 'Pourquoi l’étirer fin ?',
    why: 'Sur une pâte large, la garniture est égale, et rien ne déchire le pain.',
    word: { name: 'Étirage', means: 'étirer fin, garnir, puis rouler' },
  },
  'bulk.scatter': {
    title: 'Pourquoi un bord nu ?',
    why: 'La garniture au bord s’échappe et brûle dans la cocotte.',
  },
  'bulk.roll': {
    title: 'Pourquoi la rouler ?',
    why: 'Des couches de pâte séparent la garniture, et tiennent le pain haut.',
  },
  'bulk.proving': {
    title: 'Jusqu’où doit-elle lever ?',
    why: 'Pas à l’heure seule : à ce que vous voyez. Trois signes ensemble le disent.',
    signs: {
      riseMarks: { name: 'Elle a grandi', means: 'Regardez le repère du bac.' },
      domeEdge: { name: 'Un bord bombé', means: 'La pâte descend là où elle touche le bac.' },
      bubbles: { name: 'Des bulles', means: 'Quelques-unes dessus, beaucoup sur le côté.' },
      gonePast: { name: 'Trop poussée', means: 'Plate, retombée, collante : elle a trop attendu.' },
    },
  },
  'shape.divide': {
    title: 'Pourquoi des pâtons égaux ?',
    why: 'Des pains de même poids sont cuits en même temps.',
    word: { name: 'Division', means: 'couper la pâte en pâtons, au poids' },
  },
  'shape.preshape': {
    title: 'Pourquoi en deux fois ?',
    why: 'Une première boule souple lui donne une peau, et le façonnage tient.',
    word: { name: 'Boulage', means: 'une première boule, souple' },
  },
  'shape.benchRest': {
    title: 'Pourquoi reposer encore ?',
    why: 'Une pâte serrée se déchire. En quelques minutes, elle se relâche.',
    word: { name: 'Détente', means: 'un court repos avant le façonnage' },
  },
  'shape.finalShape': {
    title: 'Pourquoi si serré ?',
    why: 'Avec une peau serrée, le pain monte au lieu de s’étaler.',
    word: { name: 'Soudure', means: 'là où la pâte a été refermée' },
  },
  'shape.basket': {
    title: 'Pourquoi un banneton ?',
    why: 'Une pâte molle s’étale. Le banneton la tient pendant qu’elle lève.',
    word: { name: 'Banneton', means: 'un panier fariné où lève un pain' },
  },
  'shape.scoop': {
    title: 'Pourquoi une cuillère ?',
    why: 'La pâte de seigle colle et ne garde pas de forme. Le moule le fait.',
  },
  'proof.toFridge': {
    title: 'Pourquoi au froid ?',
    why: 'Le froid ralentit la pousse, et vous pouvez dormir. Le pain devient ferme et prend du goût.',
    word: { name: 'Pousse lente', means: 'la dernière pousse, lente, au frigo' },
  },
  'proof.retard': {
    title: 'À quoi le voit-on prêt ?',
    why: 'Il grandit un peu, jusqu’au bord. Un creux seul dit peu d’un pain froid.',
  },
  'proof.warm': {
    title: 'À quoi le voit-on prêt ?',
    why: 'Appuyez d’un doigt fariné, et regardez le creux.',
    word: { name: 'Test du doigt', means: 'appuyer du doigt, voir comment cela revient' },
    signs: {
      pokeSpringsBack: { name: 'Il revient d’un coup', means: 'Il lui faut plus de temps.' },
      pokeSlow: { name: 'Il revient lentement', means: 'Il est prêt.' },
      pokeStays: { name: 'Le creux reste', means: 'Il est trop poussé : cuisez-le maintenant.' },
    },
  },
  turnOn: {
    title: 'Pourquoi chauffer la cocotte ?',
    why: 'Une cocotte brûlante soulève aussitôt le pain, et garde sa vapeur.',
    word: { name: 'Cocotte', means: 'de la fonte épaisse à couvercle, qui garde la chaleur' },
  },
  before: {
    title: 'Pourquoi une liste maintenant ?',
    why: 'La fonte brûlante ne laisse pas le temps de chercher un gant.',
  },
  score: {
    title: 'Pourquoi inciser le pain ?',
    why: 'Il doit s’ouvrir quelque part. L’incision dit où.',
    word: { name: 'Incision', means: 'couper la peau juste avant le four' },
  },
  lidded: {
    title: 'Pourquoi le couvercle ?',
    why: 'La vapeur garde la peau souple pendant que le pain monte. On ôte le couvercle pour la croûte.',
    signs: {
      colours: { name: 'Du pâle au foncé', means: 'Visez le brun doré, jamais le noir.' },
      judgeCrust: { name: 'Une croûte dorée', means: 'Brune partout, plus foncée à l’incision.' },
      knock: { name: 'Un son creux', means: 'Toquez dessous : il sonne comme un tambour.' },
    },
  },
  'cool.cooling': {
    title: 'Pourquoi attendre ?',
    why: 'Dedans, il prend encore. Coupée chaude, la mie devient collante.',
    word: { name: 'Mie', means: 'l’intérieur du pain' },
  },
  'cool.note': {
    title: 'Pourquoi l’écrire ?',
    why: 'Une chose changée rend le prochain pain meilleur. Dans une semaine, vous l’aurez oubliée.',
  },
};
