import type * as english from '../words/live.ts';
import type { InTongue } from '../tongue.ts';

export const live: InTongue<typeof english.live> = {
  title: 'La journée jusqu’ici',
  open: 'Le plan du jour',
  asPlanned: 'Tout comme prévu.',
  over: 'Tout ce plan est fait.',
  none: 'Aucun jour n’est prévu.',
  working: 'Nouveau calcul de la journée',
  undecided: 'Pas encore de réponse. Le plan tient.',
  take: 'Prendre le nouveau plan',
  keep: 'Garder l’ancien plan',
  taken: 'Le nouveau plan tient.',
  came: 'Un imprévu',
  print: 'Imprimer la journée',
  calendar: 'Vers l’agenda',
  shared: 'L’agenda a une copie. Il ne sonne pas pour le four.',
  notShared: 'Le fichier n’a pu être transmis.',
  back: 'Retour',
  columns: {
    touch: 'Quoi',
    when: 'Quand',
    was: 'Avant',
    now: 'Maintenant',
    fine: 'Bien jusqu’à',
    last: 'Pas après',
  },
  bread: 'Pain',
  frozen: 'reste',
  look: 'À regarder {time} : {name}.',
  looks: 'À regarder {time}, puis {until} : {name}.',
  ofBake: '{bake} : {part}',
  others: 'Doit céder aussi : {name}.',
  clockBack: 'L’heure a été reculée de {length}. La pâte garde son temps : pain prêt {time}.',
  nextBowls: '{touch}. {bowls}',
  ironAway: '{touch} garde son heure, {time} : il faut quelqu’un ici.',
};

export const movedWhy: InTongue<typeof english.movedWhy> = {
  plain: '{touch} passe à {time}, au lieu de {until}.',
  fresh: '{touch} : {time}.',
  because: '{touch} passe à {time} : {part}.',
  soonerWait: '{name} a {length} d’avance',
  laterWait: '{name} demande {length} de plus',
  soonerDone: '{name} a eu lieu {length} plus tôt',
  laterDone: '{name} a eu lieu {length} plus tard',
  overdue: '{name} a {length} de retard',
};

export const waitNames: InTongue<typeof english.waitNames> = {
  'feed levain': 'le levain',
  mix: 'la pâte',
  'salt and water': 'la pâte',
  divide: 'la pâte',
  shape: 'le pain',
  spoon: 'le pain',
  'to fridge': 'le pain',
  it: 'le tout',
};

export const touchNouns: InTongue<typeof english.touchNouns> = {
  'feed levain': 'le rafraîchi',
  mix: 'le mélange',
  'salt and water': 'le salage',
  fold: 'le rabat {count}',
  lamination: 'l’étirage',
  divide: 'la division',
  shape: 'le façonnage',
  spoon: 'la mise en moule',
  'to fridge': 'la mise au frigo',
  'oven on': 'l’allumage du four',
  load: 'l’enfournement',
  'lid lift': 'l’ouverture des cocottes',
  vent: 'la sortie de vapeur',
  unload: 'la sortie du four',
};

export const cameUp: InTongue<typeof english.cameUp> = {
  title: 'Qu’est-il arrivé ?',
  away: 'Je dois partir',
  overslept: 'Réveil en retard',
  foldMissed: 'Un rabat manqué',
  levainLate: 'Levain en retard',
  ovenDead: 'Four en panne',
  when: 'Quand partez-vous ?',
  inLength: 'Dans {length}',
  howLong: 'Pour combien de temps ?',
  howLate: 'De combien ?',
  ovenBack: 'Quand remarchera-t-il ?',
  best: 'Faites ceci',
  fallback: 'Ou bien',
  takeThis: 'Faire ainsi',
  nothing: 'Aucun plan ne va.',
  flat: 'Cuisez des pains plats à la poêle maintenant.',
  spoils: 'Sa garniture ne se garde pas. Dans le doute, jetez.',
};

export const waysOn: InTongue<typeof english.waysOn> = {
  asPlanned: 'Partez tranquille.',
  leaveFolds: 'Sautez : {touch}.',
  lookFirst: 'Regardez la pâte avant de partir.',
  coolRoom: 'Dès {time}, mettez {name} dans la pièce la plus fraîche.',
  fridge: 'Dès {time}, mettez {name} au frigo.',
  fridgeWorks: 'Au frigo, cela lève comme en {length} dehors.',
  warmPlace: 'Mettez {name} plus au chaud, vers {celsius}.',
  foldNow: 'Rabattez maintenant.',
  fromNow: 'Continuez d’ici.',
  waitCold: 'Les pains attendent au frigo.',
  backSooner: 'Revenez {length} plus tôt : {time}.',
  later: 'Le pain est prêt {length} plus tard : {time}.',
  then: 'Puis {touch} : {time}.',
};

export const today: InTongue<typeof english.today> = {
  first: '{touch} : {time}.',
  nothing: 'Vos mains sont libres aujourd’hui.',
  hands: 'Vos mains {count} fois aujourd’hui, {length} en tout.',
  oneTouch: 'Vos mains une fois aujourd’hui, {length}.',
  bread: 'Pain prêt {time}.',
  said: {
    next: '{time} : les mains dans la pâte.',
    hands: 'Pour {minutes}.',
    breadAt: 'Prêt vers {time}.',
    breadIn: 'Prêt dans environ {minutes}.',
  },
};

export const printed: InTongue<typeof english.printed> = {
  title: 'Le plan du jour',
  made: 'Imprimé {time}. S’ils diffèrent, suivez la tablette.',
  when: 'Quand',
  what: 'Quoi',
  hands: 'Minutes',
  fine: 'Bien jusqu’à',
  last: 'Pas après',
  done: 'Fait',
  ready: 'Pain prêt',
  hot: 'Au four, suivez les appels de la tablette.',
};
