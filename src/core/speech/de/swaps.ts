import type * as english from '../words/swaps.ts';
import type { InTongue } from '../tongue.ts';

export const bookSwaps: InTongue<typeof english.bookSwaps> = {
  press: 'Tauschen',
  title: 'Tausche: {name}',
  detail: 'Jeder Druck tauscht. Unter Mehr kannst du es verwerfen.',
  dried: 'Trocken statt frisch',
  fresh: 'Frisch statt trocken',
  other: 'Stattdessen {name}',
  value: '{is} statt {was}',
  alike: '{is}, wie bisher',
  herbs:
    'Trockene Kräuter wiegen halb so viel wie frische: üblich, ohne Quelle. Bücher gehen nach Volumen: ein Drittel.',
  even: 'Gleich viel Gewicht: üblich, ohne Quelle.',
};
export const swapChanges: InTongue<typeof english.swapChanges> = {
  salt: 'Salz darin: {is} statt {was}.',
  saltIs: 'Salz darin: {is}.',
  water: 'Wasser darin: {is} statt {was}.',
  waterIs: 'Wasser darin: {is}.',
  guess: 'Aus dem Gedächtnis: die Packung weiß es besser.',
  perishable: 'Es verdirbt: kalt bis zum letzten Formen, binnen 2 Stunden im Ofen.',
  hardCheese: 'Harter, gereifter, pasteuri\u00adsierter Käse darf stehen; anderer Käse verdirbt.',
  shelf: 'Es hält sich im Regal.',
  names: 'Aufs Etikett muss: {allergens}.',
  drops: 'Nicht mehr darin: {allergens}.',
  same: 'Sonst ändert sich nichts.',
};

export const herbNames: InTongue<typeof english.herbNames> = {
  fresh: '{name}, frisch',
  dried: '{name}, getrocknet',
};
