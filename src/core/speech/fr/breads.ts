import type * as english from '../words/breads.ts';
import type { InTongue } from '../tongue.ts';

export const breadNames: InTongue<typeof english.breadNames> = {
  'cherry-hazelnut': 'Cerise et noisette',
  'lane-wheat': 'Miche de la ruelle',
  'lane-today': 'Miche de la ruelle, jour même',
  'olive-seed': 'Olive et graines',
  'barley-tin': 'Orge en moule',
  'harbour-rye': 'Seigle du port',
  'seed-oat': 'Graines et avoine',
  wholemeal: 'Blé à farine complète',
  'cheese-seed': 'Fromage et graines',
};
