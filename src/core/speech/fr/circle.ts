import type * as english from '../words/circle.ts';
import type { InTongue } from '../tongue.ts';

export const circle: InTongue<typeof english.circle> = {
  title: 'Cercle',
  edge: 'Ceux à qui vous donnez du pain',
  opening: 'Un instant',
  more: 'Plus',
  newOrder: 'Nouvelle commande',
  newOrderThen: 'pour quel jour ?',
  days: 'Les prochains jours',
  laterDays: 'Jours suivants',
  firstDays: 'Les prochains jours',
  first: 'Commencez par vos voisins. Leurs commandes viendront ici.',
  none: 'Aucun pain n’est encore commandé.',
  loaves: '{loaves}',
  closed: 'Le cercle ne peut s’ouvrir',
  closedDetail: 'Rien n’y a changé. Ouvrez cette page encore une fois.',
};

export const circleTold: InTongue<typeof english.circleTold> = {
  misread:
    'Illisibles, écartés du cercle : {count}. Premier : {path}, il fallait {expected}, il y a {got}.',
  leftOut: 'Le cercle n’a pu être lu. Le fichier gardé contient tout sauf lui.',
  full: 'La tablette est pleine. Rien n’a changé : faites de la place, puis touchez encore.',
  shows: 'Cette page ne fait que montrer la cuisine. Changez-le dans l’autre.',
  closed: 'Impossible à écrire. Rien n’a changé : touchez encore.',
};

export const neighbourWords: InTongue<typeof english.neighbourWords> = {
  title: 'Voisins',
  none: 'Personne encore. Ajoutez le premier.',
  add: 'En ajouter un',
  nameAsk: 'Qui reçoit de votre pain ?',
  nameDetail: 'Un prénom ou un signe. Il reste sur cette tablette.',
  already: 'Il y a déjà : {name}. Celui-ci s’écrit {other}.',
  name: 'Nom',
  gone: 'Effacé',
  goneDetail: 'Rien de cette personne n’est ici.',
  watch: 'Ne doit pas manger',
  watches: 'attention au contenu',
  watchNone: 'rien de dit',
  watchAsk: 'Ne doit pas manger : {name}',
  watchDetail: 'Redemandez de temps en temps.',
  yes: 'pas pour eux',
  all: 'tous',
  allKinds: { gluten: 'Toutes les céréales', nuts: 'Tous les fruits à coque' },
  later: 'Plus loin',
  first: 'Depuis le haut',
  erase: 'Effacer pour toujours',
  eraseAsk: 'Effacer {name} pour toujours ?',
  eraseDetail: 'Les commandes passées restent, sans nom. Sans retour.',
  eraseOrders: 'Partent aussi, commandes à venir : {count}. Régulières : {n}.',
  eraseHold: 'Tenir pour effacer',
  eraseHolding: 'Tenez encore',
  eraseTwo: 'Ou deux touches, bien écartées',
  eraseFirst: 'Touchez d’abord ici',
  eraseSecond: 'Puis touchez ici',
  keep: 'Garder',
};
