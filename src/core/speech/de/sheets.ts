import type * as english from '../words/sheets.ts';
import type { InTongue } from '../tongue.ts';

export const sheetWords: InTongue<typeof english.sheetWords> = {
  note: 'Ändere das Gewicht von allem Mehl, oder ein %, und jedes Gewicht folgt.',
  ingredient: 'Zutat',
  kind: 'Art',
  pct: '% von allem Mehl',
  allFlour: 'Alles Mehl',
  water: 'Wasser',
  salt: 'Salz',
  soaker: 'Wasser zum Einweichen: {name}',
  dough: 'Ganzer Teig',
  bowl: 'In die Schüssel',
  part: 'Anteil, %',
  levainFlour: 'Mehl im Sauerteig',
  levainWater: 'Wasser im Sauerteig',
  firstWater: 'Erstes Wasser',
  secondWater: 'Zweites Wasser',
  main: 'Rezept',
  rest: 'Alles davon',
  path: 'Pfad',
  value: 'Wert',
};
