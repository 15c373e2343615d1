import type * as english from '../words/book.ts';
import type { InTongue } from '../tongue.ts';

export const book: InTongue<typeof english.book> = {
  title: 'Livre',
  edge: 'Les recettes',
  baked: 'Cuit {date}',
  changed: 'Changé, pas encore gardé',
  line: '{water} % d’eau, {kinds}',
  how: '{how}. {baked}',
  filled: 'garni',
  away: 'Hors de la liste',
  awayDetail: 'Rien n’en est perdu. Touchez-en un pour le reprendre.',
  awayNone: 'Tous sont sur la liste.',
  toList: 'À la liste',
  keep: 'Garder',
  keepThen: 'en version {version}',
  notKept: 'Impossible à garder. Rien n’est perdu.',
  howMuch: 'Com\u00adbien ?',
  steps: 'Ses étapes',
  more: 'Plus',
};

export const bookKinds: InTongue<typeof english.bookKinds> = {
  cold: 'nuit au frigo',
  warm: 'jour même',
  pot: 'cocotte',
  tin: 'moule',
  stone: 'pierre',
};

export const grains: InTongue<typeof english.grains> = {
  wheat: 'blé',
  wholeWheat: 'blé complet',
  rye: 'seigle',
  spelt: 'épeautre',
  barley: 'orge',
};

export const conventions: InTongue<typeof english.conventions> = {
  ask: 'Pourcentages : comptés sur quoi ?',
  detail: 'Les deux façons existent. Ce pain garde celle choisie.',
  whole: 'Sur toute la farine',
  wholeMeans: 'celle du levain comprise',
  bowl: 'Sur celle du saladier',
  bowlMeans: 'le levain est une ligne à part',
  wholeTold: '% de toute la farine',
  bowlTold: '% de la farine du saladier',
  told: '{loaves} de {piece}, {grams} de pâte. {counted}.',
};

export const bookLines: InTongue<typeof english.bookLines> = {
  water: { whole: 'Toute l’eau', bowl: 'Eau du saladier' },
  levain: 'Levain',
  secondWater: 'Bassinage, sur toute l’eau',
  levainWater: 'Hydratation du levain',
  salt: 'Sel',
  value: '{percent} % · {grams}',
  percent: '{percent} %',
  ask: '{name}, {unit}',
  was: 'Actuel : {value}',
  is: 'Cela fait {value}',
  usual: '{value}. D’habitude : {least} à {most} %',
  only: 'Seulement {least} à {most} {unit}',
  inGrams: 'En poids',
  inPercent: 'En pour cent',
  remove: 'L’ôter',
  one: 'La seule farine : elle fait tout.',
  piece: 'Pâte par pain',
  pieceAsk: 'Combien de pâte par pain ?',
  cannot: 'Une telle pâte n’existe pas.',
};

export const bookScale: InTongue<typeof english.bookScale> = {
  title: 'Combien ?',
  detail: 'Cela change ce qu’on pèse, pas le pain.',
  loaves: 'Pains',
  bread: 'Chaque pain, cuit',
  bin: 'Farine qui reste',
  binAsk: 'Combien en reste-t-il : {name} ?',
  flour: 'Toute la farine',
  flourAsk: 'Combien de farine y a-t-il ?',
  dough: 'Toute la pâte',
  doughAsk: 'Combien de pâte en tout ?',
  breadAsk: 'Combien pèse un pain cuit ?',
  told: '{loaves} de {piece}, {grams} de pâte.',
};

export const bookFillings: InTongue<typeof english.bookFillings> = {
  title: 'Ajouter une garniture',
  detail: 'Elle entre à un dixième de la farine. Changez-le ensuite.',
  byName: 'Une autre',
  nameAsk: 'Comment s’appelle-t-elle ?',
  nameDetail: 'Ou laissez vide et continuez.',
  kindAsk: 'À quoi ressemble-t-elle le plus ?',
  noKind: 'rien de cela',
  keepsAsk: 'Comment se garde-t-elle ?',
  allergens: 'Lisez les allergènes sur le paquet.',
  shelf: 'Sur l’étagère',
  hardCheese: 'Fromage dur, affiné',
  perishable: 'Au frigo seulement',
};

export const fillingNames: InTongue<typeof english.fillingNames> = {
  walnut: 'noix',
  hazelnut: 'noisettes grillées',
  sunflower: 'graines de tournesol',
  pumpkin: 'graines de courge',
  sesame: 'graines de sésame',
  linseed: 'graines de lin',
  raisin: 'raisins secs',
  apricot: 'abricots secs',
  olive: 'olives sèches, paquet neuf',
  hardCheese: 'fromage dur, en dés',
};

export const bookMore: InTongue<typeof english.bookMore> = {
  copy: 'Faire une copie',
  compare: 'Comparer avec',
  versions: 'Versions',
  notes: 'Notes',
  name: 'Son nom',
  drop: 'Ôter de la liste',
  undo: 'Annuler mes changements',
  filling: 'Ajouter une garniture',
  count: 'Compter les pour cent',
  copyName: '{name} {n}',
  dropAsk: 'L’ôter de la liste ?',
  dropSaid: 'Ses versions et fournées sont gardées.',
  dropYes: 'Oui, l’ôter',
  dropNo: 'Non, le laisser',
  nameAsk: 'Comment s’appelle-t-il ?',
  notesAsk: 'Que faut-il en savoir ?',
};

export const bookVersions: InTongue<typeof english.bookVersions> = {
  title: 'Versions',
  line: 'Version {version}',
  first: 'venue avec le programme',
  since: 'gardée {date}',
  now: 'celle de maintenant',
  baked: 'cuite {date}',
  back: 'La reprendre',
  backThen: 'en version {version}',
  old: '{name}, version {version}',
};

export const bookCompare: InTongue<typeof english.bookCompare> = {
  ask: 'Comparer avec',
  title: 'Deux pains',
  what: 'En % de toute la farine',
  none: '–',
  inLevain: '{name}, dans le levain',
  soaks: 'eau de trempage : {name}',
  other: 'Avec un autre',
};
