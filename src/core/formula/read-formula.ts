import type { BulkTouch, Flour, Formula, LevainFlour, Process } from './formula.ts';
import { plainNotes } from './plain-name.ts';
import { Fields, Refused, type Misread } from './read-fields.ts';
import { readAllergens, readFilling, readPacket } from './read-filling.ts';

export type ReadFormula =
  | { readonly formula: Formula; readonly reason?: never }
  | { readonly formula: null; readonly reason: Misread };

/** Longest stretch of minutes a process may name: three days. */
const THREE_DAYS = 4320;

/** Longest notes of a formula, characters. */
export const MOST_NOTES = 2000;

const readFlour = (value: unknown, path: string): Flour => {
  const flour = Fields.read(value, path);
  return {
    id: flour.id('id'),
    name: flour.name('name'),
    grain: flour.oneOf('grain', ['wheat', 'wholeWheat', 'rye', 'spelt', 'barley']),
    pct: flour.number('pct', 0.1, 100),
    ...(flour.has('allergens') ? { allergens: readAllergens(flour) } : {}),
    ...readPacket(flour),
  };
};

const readTouch = (value: unknown, path: string): BulkTouch => {
  const touch = Fields.read(value, path);
  const minutes = touch.number('after', 0, THREE_DAYS);
  // eslint-disable-next-line no-restricted-syntax -- a field of the file, not a timer
  return { kind: touch.oneOf('kind', ['fold', 'laminate']), after: minutes };
};

const readProcess = (process: Fields): Process => {
  const minutes = (name: string): number => process.number(name, 0, THREE_DAYS);
  return {
    rest: minutes('rest'),
    touches: process.list('touches', 0, 12, readTouch),
    rise: process.number('rise', 10, 300),
    shaping: process.oneOf('shaping', ['round', 'scoop']),
    benchRest: minutes('benchRest'),
    counter: minutes('counter'),
    retard: minutes('retard'),
    warm: minutes('warm'),
    fridge: process.number('fridge', -5, 20),
    vessel: process.oneOf('vessel', ['pot', 'tin', 'stone']),
    preheat: minutes('preheat'),
    lidded: minutes('lidded'),
    open: minutes('open'),
    recovery: minutes('recovery'),
    cool: minutes('cool'),
  };
};

const readLevainFlour = (value: unknown, path: string): LevainFlour => {
  const flour = Fields.read(value, path);
  return { id: flour.id('id'), pct: flour.number('pct', 0.1, 100) };
};

const refuseTwins = (file: Fields, name: string, entries: readonly { id: string }[]): void => {
  const twin = entries.findIndex(({ id }, i) => entries.findIndex((e) => e.id === id) < i);
  const id = entries[twin]?.id;
  if (id !== undefined) file.refuse(`${name}[${twin}].id`, 'an id not used before', `"${id}"`);
};

const refuseNotWhole = (file: Fields, name: string, parts: readonly { pct: number }[]): void => {
  const sum = parts.reduce((all, { pct }) => all + pct, 0);
  if (Math.abs(sum - 100) <= 0.01) return;
  file.refuse(name, 'pct that sum to 100', `a sum of ${Number(sum.toFixed(2))}`);
};

const readLevainFlours = (levain: Fields, flours: readonly Flour[]): readonly LevainFlour[] => {
  const own = levain.list('flours', 1, 8, readLevainFlour);
  refuseTwins(levain, 'flours', own);
  refuseNotWhole(levain, 'flours', own);
  const strange = own.findIndex(({ id }) => flours.every((flour) => flour.id !== id));
  if (strange >= 0) {
    const ids = flours.map(({ id }) => id).join(', ');
    levain.refuse(`flours[${strange}].id`, `one of ${ids}`, `"${own[strange]!.id}"`);
  }
  return own;
};

const readLevain = (levain: Fields, flours: readonly Flour[]): Formula['levain'] => {
  const feed = levain.inner('feed');
  return {
    pff: levain.number('pff', 0.001, 0.9),
    hydration: levain.number('hydration', 0.4, 2),
    feed: {
      seed: feed.number('seed', 0.1, 100),
      flour: feed.number('flour', 0.1, 100),
      water: feed.number('water', 0.1, 200),
    },
    ...(levain.has('flours') ? { flours: readLevainFlours(levain, flours) } : {}),
  };
};

const read = (value: unknown): Formula => {
  const file = Fields.read(value, '');
  const flours = file.list('flours', 1, 8, readFlour);
  refuseTwins(file, 'flours', flours);
  refuseNotWhole(file, 'flours', flours);
  const fillings = file.list('fillings', 0, 12, readFilling);
  refuseTwins(file, 'fillings', fillings);
  return {
    id: file.id('id'),
    version: file.number('version', 1, 1_000_000, true),
    name: file.name('name'),
    flours,
    hydration: file.number('hydration', 20, 200),
    secondWater: file.number('secondWater', 0, 0.9),
    levain: readLevain(file.inner('levain'), flours),
    salt: file.number('salt', 0, 10),
    fillings,
    ...(file.has('fillingsOf') ? { fillingsOf: file.oneOf('fillingsOf', ['flour', 'dough']) } : {}),
    ...(file.has('convention') ? { convention: file.oneOf('convention', ['whole', 'bowl']) } : {}),
    ...(file.has('notes') ? { notes: plainNotes(file.text('notes', MOST_NOTES)) } : {}),
    ...(file.has('doughCelsius') ? { doughCelsius: file.number('doughCelsius', 15, 35) } : {}),
    piece: file.number('piece', 150, 2500),
    process: readProcess(file.inner('process')),
  };
};

/**
 * The one reader of a formula file (parsed JSON). Hands back a clean copy with known fields only,
 * or null with the path, what was expected there and what came. Ranges here are what the arithmetic
 * can take, wider than what bakes well; see `formulaWarnings`. Never throws.
 */
export function readFormula(value: unknown): ReadFormula {
  try {
    return { formula: read(value) };
  } catch (error) {
    if (error instanceof Refused) return { formula: null, reason: error.misread };
    throw error;
  }
}
