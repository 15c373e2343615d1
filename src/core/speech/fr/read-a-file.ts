import type * as english from '../words/read-a-file.ts';
import type { InTongue } from '../tongue.ts';

export const readAFile: InTongue<typeof english.readAFile> = {
  title: 'Lire un fichier gardé',
  detail: 'Vous voyez d’abord ce qu’il contient. Puis tenez pour le prendre.',
  choose: 'Choisir le fichier',
  all: 'Tout entre',
  goesOn: 'Cela continue d’ici',
  beside: 'Un journal d’une autre tablette',
  already: 'Tout est déjà ici',
  found: 'Fournées dedans : {count}. Dernière entrée : {date}.',
  none: 'Il ne contient aucune fournée, seulement la cuisine.',
  comes: 'Fournées qui entrent : {count}. Dernière entrée : {date}.',
  besideYours: 'Fournées qui viennent à côté des vôtres : {count}. Les vôtres restent.',
  nothing: 'Aucune fournée n’est nouvelle. Rien ne change au journal.',
  circle: 'Du cercle n’entre que ce qui manque ici.',
  keepsakes: 'Des notes et photos n’entre que ce qui manque ici.',
  both: 'Du cercle, des notes et photos n’entre que ce qui manque ici.',
  hold: 'Tenir pour prendre',
  holding: 'Cela entre',
  then: 'le tout, d’un coup',
  newer: 'La ligne {line} vient d’une version plus récente. Chargez d’abord cette version.',
  unreadable:
    'Ligne {line} illisible à {path} : il fallait {expected}, il y a {got}. Rien n’est entré.',
  cut: 'Le fichier est coupé : {got} lignes sur {expected}. Rien n’est entré.',
  changed: 'Le fichier a changé depuis sa sauvegarde. Rien n’est entré.',
  clash: 'Sa ligne {seq} dit autre chose que la même ici. Rien n’est entré.',
  differs: 'Ses étapes ne s’accordent pas à la ligne {seq}. Rien n’est entré.',
  failed: 'Impossible à écrire. Faites de la place sur la tablette, puis réessayez.',
  meanwhile: 'Quelque chose a été noté ici entre-temps. Choisissez encore le fichier.',
  closed: 'Ce qui est ici ne peut se lire maintenant. Choisissez encore le fichier.',
  otherLeftOut:
    'Un journal d’une autre tablette est omis. Sa ligne {seq} est illisible à {path} : il fallait {expected}, il y a {got}.',
};
