import type * as english from '../words/filling-kinds.ts';
import type { InTongue } from '../tongue.ts';

export const fillingKinds: InTongue<typeof english.fillingKinds> = {
  driedFruit: 'Trockenfrüchte',
  candiedPeel: 'kandierte Schale',
  nuts: 'Nüsse',
  seeds: 'Samen',
  sesame: 'Sesam',
  chocolate: 'Schokolade',
  dryOlives: 'trocken gesalzene Oliven, neue Packung',
  brinedOlives: 'Oliven in Salzlake',
  driedTomato: 'getrocknete Tomaten, trocken',
  inOil: 'Gemüse oder Kräuter in Öl',
  driedHerbs: 'getrocknete Kräuter',
  freshHerbs: 'frische Kräuter',
  hardCheese: 'harter, gereifter, pasteuri\u00adsierter Käse',
  freshCheese: 'Frischkäse oder weicher Käse',
  roastVegetables: 'Ofengemüse',
  cookedPotato: 'gekochte Kartoffel',
  rawOnion: 'rohe Zwiebel',
  cookedGrain: 'gekochtes Korn, Brei',
  rolledOats: 'Haferflocken',
  curedMeat: 'gepökeltes oder gekochtes Fleisch',
  cookedEgg: 'gekochtes Ei',
  freshFruit: 'frisches Obst',
};
export const fillingKindsLines: InTongue<typeof english.fillingKindsLines> = {
  fillingGuess: 'Aus dem Gedächtnis. Die Packung weiß es besser.',
};
