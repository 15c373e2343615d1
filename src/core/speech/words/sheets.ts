import { inTongue } from '../tongue.ts';

/** The words inside a sheet that is written. Its kinds are in core/sheets/line-kind.ts. */
export const sheetWords = inTongue('sheets', 'sheetWords', {
  note: 'Change the weight of all flour, or a %, and every weight follows.',
  ingredient: 'Ingredient',
  kind: 'Kind',
  pct: '% of all flour',
  allFlour: 'All flour',
  water: 'Water',
  salt: 'Salt',
  soaker: 'Water to soak {name}',
  dough: 'Whole dough',
  bowl: 'Into the bowl',
  part: 'part, %',
  levainFlour: 'Flour in the levain',
  levainWater: 'Water in the levain',
  firstWater: 'First water',
  secondWater: 'Second water',
  /** The names of the two sheets. */
  main: 'Formula',
  rest: 'All of it',
  path: 'path',
  value: 'value',
} as const);
