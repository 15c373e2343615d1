import type * as english from '../words/picture.ts';
import type { InTongue } from '../tongue.ts';

export const picture: InTongue<typeof english.picture> = {
  title: 'Son image',
  none: 'Pas encore d’image',
  detail: 'Gardée petite, sans lieu ni heure. Dans le fichier gardé ; jamais partagée.',
  alt: 'Image : {name}',
  camera: 'Pren\u00addre une photo',
  choose: 'En choisir une',
  drop: 'L’ôter',
  busy: 'Elle se réduit',
};

export const pictureTold: InTongue<typeof english.pictureTold> = {
  none: 'Ce fichier n’est pas une image. Rien n’a changé : choisissez-en un autre.',
  large:
    'Cette image est trop grande : 20 mégaoctets et 60 millions de points au plus. Rien n’a changé.',
  broken: 'Cette image ne peut se lire ici. Rien n’a changé : choisissez-en une autre.',
  full: 'La tablette est pleine. Rien n’a changé : faites de la place, puis réessayez.',
  closed: 'Ce navigateur ne laisse pas garder d’images. Rien n’a changé.',
  leftOut: 'Les images n’ont pu être lues. Le fichier gardé contient tout sauf elles.',
};
