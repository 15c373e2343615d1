import type * as english from '../words/filling-kinds.ts';
import type { InTongue } from '../tongue.ts';

export const fillingKinds: InTongue<typeof english.fillingKinds> = {
  driedFruit: 'fruits secs',
  candiedPeel: 'écorces confites',
  nuts: 'fruits à coque',
  seeds: 'graines',
  sesame: 'sésame',
  chocolate: 'chocolat',
  dryOlives: 'olives sèches, paquet neuf',
  brinedOlives: 'olives en saumure',
  driedTomato: 'tomates séchées, sèches',
  inOil: 'légumes ou herbes à l’huile',
  driedHerbs: 'herbes séchées',
  freshHerbs: 'herbes fraîches',
  hardCheese: 'fromage dur, affiné, pasteurisé',
  freshCheese: 'fromage frais ou mou',
  roastVegetables: 'légumes rôtis',
  cookedPotato: 'pomme de terre cuite',
  rawOnion: 'oignon cru',
  cookedGrain: 'grains cuits, porridge',
  rolledOats: 'flocons d’avoine',
  curedMeat: 'viande salée ou cuite',
  cookedEgg: 'œuf cuit',
  freshFruit: 'fruits frais',
};

export const fillingKindsLines: InTongue<typeof english.fillingKindsLines> = {
  fillingGuess: 'De mémoire. Le paquet le sait mieux.',
};
