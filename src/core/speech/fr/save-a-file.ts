import type * as english from '../words/save-a-file.ts';
import type { InTongue } from '../tongue.ts';

export const saveAFile: InTongue<typeof english.saveAFile> = {
  detail: 'Tout ce qui est ici, notes et photos telles quelles.',
  names: 'Noms et voix',
  marks: 'omis',
  named: 'cette fois',
  care: 'Qui a le fichier lit les noms et entend les voix.',
  slab: 'Garder',
  sheet: 'Mesures en tableau',
  sheetFile: 'mesures.csv',
  noReadings: 'pas encore de mesure',
  handed: {
    shared: 'transmis',
    saved: 'gardé',
    left: 'pas gardé',
    failed: 'pas gardé',
  },
  keepsakesLeftOut:
    'Notes, photos et voix de fournées n’ont pu être lues. Le fichier gardé contient tout sauf elles.',
  othersLeftOut:
    'Un journal d’une autre tablette n’a pu être lu. Le fichier gardé contient tout sauf lui.',
};
