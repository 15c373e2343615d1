import type * as english from '../words/orders.ts';
import type { InTongue } from '../tongue.ts';

export const orderRefused: InTongue<typeof english.orderRefused> = {
  orderNoDay: 'Ce jour n’existe pas. Choisissez-en un autre.',
  orderPast: 'Ce jour est passé. Choisissez aujourd’hui ou plus tard.',
  orderNobody: 'Personne de ce nom n’est au cercle. Choisissez pour qui.',
  orderNoHour: 'Cette heure n’existe pas. Choisissez-en une autre.',
  orderEmpty: 'Il n’y a encore aucun pain. Choisissez-en un.',
  orderNoBread: 'Ce pain n’est pas au Livre. Choisissez-en un autre.',
  orderCount: 'Impossible d’en prendre autant. Prenez {least} à {most} d’un pain.',
  orderWeight: 'Impossible de prendre ce poids. Choisissez {least} à {most}.',
};

export const orderAsked: InTongue<typeof english.orderAsked> = {
  watchNamed: '{name} contient : {allergens}. C’est sur sa liste.',
  watchOpen: '{name} contient peut-être : {allergens}. Lisez le paquet.',
  watchUnknown: '{name} : on ne sait pas ce que contient : {filling}. Voyez le paquet.',
  orderClosed: 'Pour ce jour, commandes closes à {time} le {date}.',
  orderHourPast: 'Cette heure est déjà passée.',
  orderTwice: 'Il y a déjà une commande ce jour-là.',
};

export const orderPage: InTongue<typeof english.orderPage> = {
  noneHere: 'Aucun pain n’est encore commandé pour ce jour.',
  title: 'Cuire pour le {date}',
  titled: 'Cuire {loaves} pour le {date}',
  totals: 'Pains de chaque sorte',
  orders: 'Commandes',
  add: 'Ajouter une commande',
  more: 'Plus sur ce jour',
  dayAsk: 'Cuire quel jour ?',
  anyHour: 'toute heure',
  paid: 'payé',
  handed: 'remis',
  nobody: 'Personne de connu',
  who: 'Pour qui est-ce ?',
  whoNone: 'Personne n’est encore au cercle.',
  newWho: 'Quelqu’un de nouveau',
  lastTime: 'Dernière : {line}',
  what: 'Quel pain pour {name} ?',
  same: 'Comme la dernière fois',
};

export const orderFace: InTongue<typeof english.orderFace> = {
  title: '{name}, {date}',
  another: 'Un autre pain',
  fetched: 'Retrait',
  paid: 'Payé',
  yes: 'oui',
  no: 'pas encore',
  off: 'L’annuler',
  skip: 'Sauter ce jour',
  end: 'La finir ici',
  weekly: 'Chaque {date}',
  scope: 'Chaque {date} : changer',
  onlyHere: 'ce jour seulement',
  fromHere: 'à partir d’ici',
  gone: 'Cette commande est annulée',
  goneDetail: 'Ce qui est annulé revient d’une touche.',
  hourAsk: 'Retrait à quelle heure ?',
  hourSaid: 'Réglé sur {time}.',
  earlier: '30 minutes avant',
  later: '30 minutes après',
};

export const orderLine: InTongue<typeof english.orderLine> = {
  loaves: '{count} {name}',
  several: '{loaves} de {count} sortes',
  size: '{count} de {grams}',
  sized: '{name} ({line})',
  cutShort: 'tranché',
  gone: 'un pain absent du Livre',
  count: 'Pains',
  keyIn: 'Taper le nombre',
  countAsk: 'Combien de pains ?',
  whole: 'Entier',
  cut: 'Tranché',
  cutAsk: 'Entier ou tranché',
  weight: 'Froid, il pèse',
  asPiece: 'comme il vient',
  asPieceLong: 'Comme son pâton le donne',
  gramsAsk: 'Poids une fois froid ?',
  only: 'Seulement {range}',
  now: 'Actuel : {value}',
};

export const orderAsk: InTongue<typeof english.orderAsk> = {
  look: 'Voyez d’abord ceci',
  refused: 'Elle ne peut être prise',
  yes: 'La prendre quand même',
  no: 'Non, laisser',
  addTo: 'Y ajouter',
  second: 'Une seconde',
  choose: 'Choisir encore',
  care: 'Demandez aussi au voisin. Dans le doute, n’en donnez pas.',
};

export const standingWords: InTongue<typeof english.standingWords> = {
  title: 'Commandes régulières',
  none: 'Rien encore. Faites une commande, puis touchez chaque semaine.',
  told: 'Chaque {date}, {line}',
  weekday: 'Quel jour de la semaine ?',
  weekdayShort: 'Jour',
  from: 'Dès',
  until: 'Jusqu’à',
  untilAsk: 'Jusqu’à quel jour ?',
  fromAsk: 'À partir de quel jour ?',
  on: 'sans fin',
  what: 'Quoi et quand',
  left: 'Sautés',
  later: 'Jours suivants',
  sooner: 'Jours d’avant',
  begins: 'dès le {date}',
  ends: 'jusqu’au {date}',
};
