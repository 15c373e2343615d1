import type * as english from '../words/log-share.ts';
import type { InTongue } from '../tongue.ts';

export const logShare: InTongue<typeof english.logShare> = {
  title: 'Partager cette fournée',
  detail: 'Une page qui s’ouvre sur tout appareil, sans réseau.',
  in: 'Dedans : heures, mesures, appels, tours, poids et la courbe.',
  out: 'Pas dedans : noms, qui en a mangé, voix.',
  note: 'Vos mots',
  noteNone: 'aucun',
  photos: 'Photos',
  photosNone: 'zéro',
  inPage: '{count} dedans',
  outOfPage: 'pas dedans',
  noteIn: 'dedans',
  careNote: 'Relisez ce que vous avez tapé : cela peut nommer quelqu’un.',
  carePhotos: 'Revoyez les photos : elles peuvent montrer quelqu’un.',
  slab: 'Partager',
  then: 'la page de cette fournée',
  back: 'Retour',
  sheet: 'En tableau',
  handed: {
    shared: 'C’est transmis.',
    saved: 'Gardé dans les téléchargements de cet appareil.',
    left: 'Pas transmis. C’est encore ici.',
    failed: 'Cela n’a pas marché. Réessayez.',
  },
  fileName: '{name} {day}',
  file: {
    chart: 'Courbe',
    first: 'En un coup d’œil',
    photo: 'Photo {n} sur {count}',
    band: 'Hachuré : quatre levains-chefs sur cinq ainsi estimés sont là. 1 est la vitesse habituelle.',
    lived:
      'Heures vécues par la pâte : tout droit d’une mesure à l’autre, selon le calcul d’aujourd’hui. Cela n’a rien prévu.',
    marks: 'Une croix est une mesure gardée comme étrange. Un triangle est un appel.',
    foot: 'Écrit par Loafward. Aucun script, aucun réseau.',
  },
};
