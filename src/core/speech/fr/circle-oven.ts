import type * as english from '../words/circle-oven.ts';
import type { InTongue } from '../tongue.ts';

export const roomPage: InTongue<typeof english.roomPage> = {
  title: 'Place qui reste',
  headline: 'Voyez la place le {date}',
  empty: 'Personne n’a encore commandé ce jour-là.',
  askHours: 'Dites quand le four cuit, et il compte aussi.',
  alt: 'Ce qui est pris le {date}. {words}',
  name: { oven: 'Four', fridge: 'Frigo', bowls: 'Saladiers' },
  used: {
    oven: '{time} sur {until}',
    fridge: '{count} sur {of} places',
    bowls: '{count} sur {of} saladiers',
  },
  unsaid: {
    oven: '{time}, heures pas dites',
    fridge: '{count}, places pas dites',
    bowls: '{count}, saladiers pas dits',
  },
  state: { free: 'libre', full: 'plein', over: 'trop' },
  line: '{name} : {value}, {words}.',
  lineUnsaid: '{name} : {value}.',
  table: 'En tableau',
  bars: 'En barres',
  columns: { what: 'Quoi', taken: 'Pris', of: 'Sur', left: 'Reste', state: 'État' },
  nowhere: 'Aucune cocotte ici ne prend : {name}.',
  unknown: 'Pas comptés, le Livre ne les a plus : {count} pains.',
};

export const breadsPage: InTongue<typeof english.breadsPage> = {
  press: 'Pain par pain',
  headline: 'Voyez ce qui tient le {date}',
  columns: { bread: 'Pain', ordered: 'Commandé', more: 'Place pour', binds: 'Limite' },
  noLimit: 'sans limite',
  binds: { oven: 'le four', pots: 'les cocottes', fridge: 'le frigo', bowls: 'les saladiers' },
};

export const loadsPage: InTongue<typeof english.loadsPage> = {
  press: 'Tour par tour',
  headline: 'Voyez les tours du {date}',
  detail: 'Dernier sorti {until}. Tout se retire dès {time}.',
  none: 'Rien à cuire encore ce jour-là.',
  noHours: '{count} en {time}. Dites quand le four cuit pour voir les heures.',
  columns: { in: 'Entrée', out: 'Sortie', what: 'Quoi', cool: 'Froid dès' },
  load: '{count} {name}',
  size: '{name}, {grams}',
  more: 'Encore {count} tours.',
  past: 'Les heures du four finissent avant, à {until}.',
  early: 'Retirées avant d’être froides : {count} commandes.',
};

export const boundWords: InTongue<typeof english.boundWords> = {
  oven: 'Les heures du four sont trop courtes.',
  pots: 'Aucune cocotte ici ne prend ce pain.',
  fridge: 'Le frigo a trop peu de places.',
  bowls: 'Les saladiers tiennent trop peu de pâte.',
};

export const roomWords: InTongue<typeof english.roomWords> = {
  more: '{name} : place pour {loaves} de plus.',
  noLimit: '{name} : aucune limite n’est dite.',
  none: '{name} : complet.',
  full: 'Complet.',
  still: 'Il y a place pour {loaves} : {name}.',
  goesNone: 'Il n’y a place pour aucun.',
  goesOn: 'Avec le four jusqu’à {until}, retrait dès {time}.',
  next: 'Tout tient le {date}.',
  nextNone: 'Aucun jour à venir ne prend tout.',
  warm: 'Encore tiède à {time}. Froid dès {until}.',
  setting: 'Pas prêt à couper à {time}. Prêt dès {until}.',
  openBag: 'Retiré tiède : le sac reste ouvert.',
  onDay: '{time} le {date}',
};

export const hoursPage: InTongue<typeof english.hoursPage> = {
  title: 'Heures du four',
  headline: 'Dites quand le four cuit',
  nextDay: 'Cela dépasse minuit.',
  from: 'Premier tour',
  to: 'Dernier pain sorti',
  closes: 'Fin des commandes',
  fromAsk: 'Quand est le premier tour ?',
  toAsk: 'Quand sort le dernier pain ?',
  closesAsk: 'Fin des commandes combien de temps avant ?',
  closesAtAsk: 'À quelle heure ce jour-là ?',
  never: 'jamais',
  closesValue: '{date}, {time}',
  sameDay: 'jour même',
  dayBefore: 'la veille',
  daysBefore: '{count} jours avant',
  forget: 'Sans heures fixes',
  neverClose: 'Jamais de fin',
  now: 'Réglé sur {time}.',
};
