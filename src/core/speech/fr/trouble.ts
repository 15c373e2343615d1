import type * as english from '../words/trouble.ts';
import type { InTongue } from '../tongue.ts';

export const trouble: InTongue<typeof english.trouble> = {
  storeClosed:
    'Ce navigateur ne laisse pas garder le journal. La fournée continue : gardez-la en fichier.',
  storeUnread:
    'Le journal n’a pu s’ouvrir : une fournée qui y est ne se voit ni ne sonne. Rechargez la page.',
  storeFull:
    'La tablette est pleine. La fournée continue en mémoire : gardez-la en fichier, puis faites de la place.',
  storeTaken: 'Une autre page a gardé d’abord. Voyez où en est la fournée, puis touchez encore.',
  storeGone: 'Le journal gardé a été effacé. Il est réécrit de mémoire : gardez-le en fichier.',
  logNewer:
    'Journal version {version} : plus récent que cette page. Chargez d’abord la nouvelle version.',
  logUnreadable:
    'Ligne {seq} du journal illisible à {path} : il fallait {expected}, il y a {got}. Continuez depuis la ligne {last}, ou gardez en fichier.',
  logMismatch: 'Ligne {seq} fausse. Retour au dernier bon point : vérifiez.',
  machineFailed: 'Cette touche n’a pu aboutir. Le dernier bon point est revenu : touchez encore.',
  equipmentUnreadable:
    'Réglages de la cuisine illisibles à {path} : il fallait {expected}, il y a {got}. Réglez-les encore.',
  kitchenRange: 'Ici seulement {range}. Vous avez tapé {got} : changez.',
  clockBack:
    'L’heure de la tablette a reculé. Vérifiez-la, et voyez tout de suite ce qui est chaud.',
  pressRefused: 'Cette étape est passée. Regardez l’écran, puis touchez.',
  nothingToTakeBack: 'Il n’y a rien à annuler. Continuez d’ici.',
  insecure:
    'Ouverte ainsi, la page ne marche pas hors ligne et ne reste pas allumée. Ouvrez-la en https.',
  soundMissing: 'Aucun son n’est possible ici. Mettez un second minuteur à chaque étape brûlante.',
  voiceLost: 'Des mots n’ont pu s’entendre. Lisez-les à l’écran : rien d’autre n’est perdu.',
};

export const whereAreYou: InTongue<typeof english.whereAreYou> = {
  headline: 'Dites où en est votre pâte',
  detail: 'Le journal ne sait pas. Choisissez votre étape.',
  slab: 'J’en suis là',
  then: 'la fournée repart de là',
  spoken: 'Dites où en est votre pâte. Choisissez votre étape.',
};

export const troubleLines: InTongue<typeof english.troubleLines> = {
  saveAsFile: 'Garder en fichier',
  loadAgain: 'Recharger',
};
