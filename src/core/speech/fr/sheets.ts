import type * as english from '../words/sheets.ts';
import type { InTongue } from '../tongue.ts';

export const sheetWords: InTongue<typeof english.sheetWords> = {
  note: 'Changez le poids de toute la farine, ou un %, et tous les poids suivent.',
  ingredient: 'Ingrédient',
  kind: 'Sorte',
  pct: '% de toute la farine',
  allFlour: 'Toute la farine',
  water: 'Eau',
  salt: 'Sel',
  soaker: 'Eau de trempage : {name}',
  dough: 'Toute la pâte',
  bowl: 'Dans le saladier',
  part: 'part, %',
  levainFlour: 'Farine du levain',
  levainWater: 'Eau du levain',
  firstWater: 'Première eau',
  secondWater: 'Bassinage',
  main: 'Recette',
  // By these the program knows its own sheet again, whatever the tongue it was written in.
  rest: 'All of it',
  path: 'path',
  value: 'value',
};
