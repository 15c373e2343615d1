import type * as english from '../words/parts.ts';
import type { InTongue } from '../tongue.ts';

export const partNames: InTongue<typeof english.partNames> = {
  wholemealWheat: 'farine complète de blé',
  cherry: 'cerises séchées',
  pumpkin: 'graines de courge grillées',
  sesame: 'sésame grillé',
  agedCheese: 'fromage dur, affiné',
};
