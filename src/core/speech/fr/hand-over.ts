import type * as english from '../words/hand-over.ts';
import type { InTongue } from '../tongue.ts';

export const handOver: InTongue<typeof english.handOver> = {
  open: 'Remettre',
  title: 'Remettre le pain',
  list: 'La liste',
  none: 'Personne n’a commandé pour ce jour.',
  toCome: 'À remettre : {count}',
  allGone: 'Tout est remis',
  loaf: '1 pain',
  loaves: '{count} pains',
  any: 'à toute heure',
  nobody: 'Sans nom',
  unknownBread: 'un pain qui n’est plus au Livre',
  paid: 'Payé',
  toPay: 'À payer : {value}.',
  handed: 'Remis {time}',
  payment: 'Payé : {name}',
  watch: 'Ne doit pas manger : {allergens}.',
  holds: '{bread} contient : {allergens}.',
  unread: 'Tous les paquets ne sont pas lus.',
  warm: 'Encore tiède : laissez le sac ouvert.',
  coolAt: 'Froid à {time}.',
  stillHere: 'À venir',
  everyone: 'Tout voir',
};

export const handTotals: InTongue<typeof english.handTotals> = {
  open: 'Tous les pains',
  title: 'Compter les pains',
  bread: 'Pain',
  all: 'En tout',
  cut: 'À trancher',
  handed: 'Remis',
  left: 'Encore là',
};

export const handPrint: InTongue<typeof english.handPrint> = {
  title: 'Imprimer la liste',
  detail: 'Par heure, avec une case à cocher pour chacun.',
  names: 'Elle porte des noms.',
  print: 'Imprimer',
  then: 'A4 ou Letter',
  list: 'Liste de retrait',
  when: 'Quand',
  who: 'Qui',
  what: 'Quoi',
  handed: 'Remis',
  paid: 'Payé',
  private: 'Elle porte des noms. Que personne ne la garde.',
  caution: 'Contenu d’un pain : voyez le paquet, les étiquettes changent.',
  warm: 'Le sac d’un pain tiède reste ouvert jusqu’à ce qu’il soit froid.',
  made: 'Imprimé {time}. S’ils diffèrent, suivez la tablette.',
};

export const handMessage: InTongue<typeof english.handMessage> = {
  open: 'Les prévenir',
  another: 'Pour un autre',
  title: 'Copier un message',
  ask: 'Pour qui est-ce ?',
  detail: 'Cette tablette n’envoie rien.',
  everyone: 'Pour tous',
  names: 'Il porte des noms. Cette tablette n’envoie rien.',
  copy: 'Copier',
  then: 'puis collez-le',
  copied: 'C’est copié. Collez-le où vous voulez.',
  notCopied: 'Impossible de copier. Sélectionnez le texte à la main.',
};

export const message: InTongue<typeof english.message> = {
  at: 'Votre pain le {date}, à {time} :',
  anyTime: 'Votre pain le {date}, à toute heure :',
  all: 'Pain le {date} :',
  hour: 'À {time}',
  any: 'À toute heure',
  line: '{count} × {name}',
  cut: 'tranché',
  whose: '{name} : {lines}',
  nobody: 'Sans nom',
  toPay: 'À payer : {value}.',
  warm: 'Si le pain est tiède, laissez son sac ouvert jusqu’à ce qu’il soit froid.',
};
