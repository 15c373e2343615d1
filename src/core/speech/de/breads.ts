import type * as english from '../words/breads.ts';
import type { InTongue } from '../tongue.ts';

export const breadNames: InTongue<typeof english.breadNames> = {
  'cherry-hazelnut': 'Kirsche und Haselnuss',
  'lane-wheat': 'Gassenbrot',
  'lane-today': 'Gassenbrot, selber Tag',
  'olive-seed': 'Olive und Saaten',
  'barley-tin': 'Gerste im Kasten',
  'harbour-rye': 'Hafenroggen',
  'seed-oat': 'Saaten und Hafer',
  wholemeal: 'Weizen mit Vollkorn',
  'cheese-seed': 'Käse und Saaten',
};
