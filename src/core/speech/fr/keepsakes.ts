import type * as english from '../words/keepsakes.ts';
import type { InTongue } from '../tongue.ts';

export const keepsakes: InTongue<typeof english.keepsakes> = {
  title: 'Album de cette fournée',
  detail: 'Sur cette tablette. Vous pouvez l’effacer.',
  opening: 'Un instant',
  closed: 'Impossible à ouvrir',
  closedDetail: 'Rien n’y a changé. Ouvrez cette page encore une fois.',
  back: 'La fournée',
  photos: 'Photos',
  latest: 'La dernière photo',
  note: 'Note',
  voices: 'Notes parlées',
  who: 'Qui en a mangé',
  tags: 'Étiquettes',
  none: 'rien encore',
  of: '{n} sur {most}',
  hide: 'Cacher cette fournée',
  hidden: 'Cachée : la liste l’omet.',
  show: 'La montrer encore',
  erase: 'Effacer pour toujours',
  later: 'Plus loin',
  first: 'Depuis le haut',
  goesOn: '{words}…',
};

export const photoWords: InTongue<typeof english.photoWords> = {
  none: 'Pas encore de photo',
  noneDetail: 'Croûte ou mie : gardée petite, sans lieu ni heure.',
  one: 'Photo {n} sur {of}',
  oneDetail: '{date}',
  alt: 'Photo {n} de cette fournée',
  camera: 'Pren\u00addre une photo',
  choose: 'En choisir une',
  next: 'Photo suivante',
  erase: 'Effacer celle-ci',
  eraseAsk: 'Effacer cette photo pour toujours ?',
  eraseDetail: 'Sans retour, et aucun fichier ne la ramène ici.',
  busy: 'Elle se réduit',
  full: 'Une fournée n’en garde pas plus.',
};

export const spokenWords: InTongue<typeof english.spokenWords> = {
  title: 'Notes parlées',
  none: 'Dites ce qu’il faut retenir, une minute au plus.',
  detail: 'Elles ne quittent la tablette que dans un fichier où vous les cochez.',
  one: 'Note {n}',
  at: '{date} {time}',
  plays: 'arrêter',
  record: 'Enregistrer',
  recordThen: 'touchez encore pour arrêter',
  stop: 'Arrêter',
  heard: 'Je vous entends',
  unheard: 'Parlez maintenant',
  wait: 'Un instant',
  full: 'Plein',
  fullThen: 'effacez-en une d’abord',
  erase: 'Effacer la note {n}',
  eraseAsk: 'Effacer la note {n} pour toujours ?',
  eraseDetail: 'Sans retour, et aucun fichier ne la ramène ici.',
  lost: 'On ne peut l’écouter sur cette tablette.',
  noMicrophone: 'Le micro n’est pas libre. Ouvrez cette page encore une fois.',
  why: {
    denied: 'Le micro n’est pas permis. Permettez-le dans le navigateur.',
    none: 'Cette tablette n’a pas de micro.',
    silent: 'Aucune voix entendue. Rien n’est gardé.',
    failed: 'L’enregistrement a échoué. Réessayez.',
    stopped: 'Arrêté, et rien n’est gardé : un appel passe d’abord.',
    hot: 'Pas quand c’est brûlant ou qu’un appel vient.',
  },
};

export const whoWords: InTongue<typeof english.whoWords> = {
  title: 'Qui en a mangé ?',
  detail: 'Touchez chacun. Seul un signe est gardé ; les noms restent au cercle.',
  home: 'À la maison',
  ate: 'en a mangé',
  nobody: 'Les voisins de votre cercle viennent aussi ici.',
  lost: 'Le cercle ne peut s’ouvrir. Ses noms ne sont pas montrés.',
};

export const tagPage: InTongue<typeof english.tagPage> = {
  title: 'Quelles étiquettes ?',
  detail: 'Touchez pour mettre, encore pour ôter.',
  on: 'mise',
  own: 'Vos propres mots',
  ownAsk: 'Quels mots à vous ?',
  ownDetail: 'Court : cela tient sur une touche. Effacé avec le reste.',
  full: 'Une fournée n’en a pas plus.',
};

export const noteWords: InTongue<typeof english.noteWords> = {
  ask: 'Que faut-il retenir ?',
  detail: 'Elle va telle quelle dans le fichier gardé, noms compris.',
};

export const eraseWords: InTongue<typeof english.eraseWords> = {
  ask: 'Tout effacer pour toujours ?',
  detail: 'Photos, notes parlées, note, qui en a mangé, vos étiquettes.',
  stays: 'Les faits restent : heures, poids, mesures, mie.',
  hold: 'Tenir pour effacer',
  holding: 'Tenez encore',
  two: 'Ou deux touches, bien écartées',
  first: 'Touchez d’abord ici',
  second: 'Puis touchez ici',
  keep: 'Garder',
};

export const keepsakesTold: InTongue<typeof english.keepsakesTold> = {
  misread:
    'Souvenirs de fournées illisibles, écartés : {count}. Premier : {path}, il fallait {expected}, il y a {got}.',
  full: 'La tablette est pleine. Rien n’a changé : faites de la place, puis touchez encore.',
  shows: 'Cette page ne fait que montrer la cuisine. Changez-le dans l’autre.',
  closed: 'Impossible à écrire. Rien n’a changé : touchez encore.',
};
