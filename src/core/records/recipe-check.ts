import { amount, check, fields, id, listOf, maybe, object, string, text } from './checks.ts';

/** As many loaves as a list may be made of. */
const count = check(
  'a whole number to 1,000',
  (value) => Number.isInteger(value) && Number(value) >= 0 && Number(value) <= 1_000,
);

const flour = fields({ id: text, name: text, grain: id, pct: amount });
const filling = fields({
  id: text,
  name: text,
  pct: amount,
  keeps: id,
  allergens: listOf(string),
  prepare: maybe(listOf(id)),
  group: maybe(string),
  soak: maybe(fields({ water: amount })),
  brings: maybe(fields({ salt: amount, water: amount })),
});

const process = fields({
  rest: amount,
  // eslint-disable-next-line no-restricted-syntax -- a field of the file, not a timer
  touches: listOf(fields({ kind: id, after: amount })),
  rise: amount,
  shaping: id,
  benchRest: amount,
  counter: amount,
  retard: amount,
  warm: amount,
  fridge: amount,
  vessel: id,
  preheat: amount,
  lidded: amount,
  open: amount,
  recovery: amount,
  cool: amount,
});

const levain = fields({
  pff: amount,
  hydration: amount,
  feed: fields({ seed: amount, flour: amount, water: amount }),
  flours: maybe(listOf(fields({ id: text, pct: amount }))),
});

const formula = fields({
  id: text,
  version: amount,
  name: text,
  flours: listOf(flour, 1),
  hydration: amount,
  secondWater: amount,
  levain,
  salt: amount,
  fillings: listOf(filling),
  piece: amount,
  process,
});

const lines = listOf(fields({ item: text, name: text, grams: amount, division: amount }));

/**
 * What a recipe that is pinned has to hold for a bake to be shown by it: each field and its type. Which numbers
 * may be was judged as it was made, by the program of that day.
 */
export const recipe = fields({
  formula,
  loaves: count,
  piece: amount,
  lines: fields({ feed: lines, first: lines, second: lines, filling: lines }),
  keepBack: amount,
  dough: amount,
  process,
  warnings: listOf(fields({ key: id, values: object })),
});
