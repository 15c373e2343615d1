import { fields, id, listOf, maybe, number, object, string, text } from './checks.ts';

const flour = fields({ id: text, name: text, grain: id, pct: number });
const filling = fields({
  id: text,
  name: text,
  pct: number,
  keeps: id,
  allergens: listOf(string),
  prepare: maybe(listOf(id)),
  group: maybe(string),
  soak: maybe(fields({ water: number })),
  brings: maybe(fields({ salt: number, water: number })),
});

const process = fields({
  rest: number,
  // eslint-disable-next-line no-restricted-syntax -- a field of the file, not a timer
  touches: listOf(fields({ kind: id, after: number })),
  rise: number,
  shaping: id,
  benchRest: number,
  counter: number,
  retard: number,
  warm: number,
  fridge: number,
  vessel: id,
  preheat: number,
  lidded: number,
  open: number,
  recovery: number,
  cool: number,
});

const levain = fields({
  pff: number,
  hydration: number,
  feed: fields({ seed: number, flour: number, water: number }),
  flours: maybe(listOf(fields({ id: text, pct: number }))),
});

const formula = fields({
  id: text,
  version: number,
  name: text,
  flours: listOf(flour, 1),
  hydration: number,
  secondWater: number,
  levain,
  salt: number,
  fillings: listOf(filling),
  piece: number,
  process,
});

const lines = listOf(fields({ item: text, name: text, grams: number, division: number }));

/**
 * What a recipe that is pinned has to hold for a bake to be shown by it: each field and its type. Which numbers
 * may be was judged as it was made, by the program of that day.
 */
export const recipe = fields({
  formula,
  loaves: number,
  piece: number,
  lines: fields({ feed: lines, first: lines, second: lines, filling: lines }),
  keepBack: number,
  dough: number,
  process,
  warnings: listOf(fields({ key: id, values: object })),
});
