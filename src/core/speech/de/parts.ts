import type * as english from '../words/parts.ts';
import type { InTongue } from '../tongue.ts';

export const partNames: InTongue<typeof english.partNames> = {
  wholemealWheat: 'Vollkornmehl aus Weizen',
  cherry: 'getrocknete Kirschen',
  pumpkin: 'geröstete Kürbiskerne',
  sesame: 'gerösteter Sesam',
  agedCheese: 'harter, gereifter Käse',
};
