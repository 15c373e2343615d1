import type { Reading } from './fact.ts';
import { READING_RANGES } from './reading-ranges.ts';
import { slotOf, type NumberSlot } from './reading-slot.ts';

/** Why it is no reading: where, what was expected, what came. */
export interface NoReading {
  readonly path: string;
  readonly expected: string;
  readonly got: unknown;
}

export type ReadReading =
  | { readonly reading: Reading; readonly reason?: never }
  | { readonly reading: null; readonly reason: NoReading };

type Fields = Readonly<Record<string, 'number' | readonly string[]>>;

/** What each kind must carry: a number, or one of these words. */
const SHAPES: Readonly<Record<Reading['what'], Fields>> = {
  doughTemperature: { celsius: 'number' },
  kitchenTemperature: { celsius: 'number' },
  coreTemperature: { celsius: 'number' },
  flourTemperature: { celsius: 'number' },
  levainTemperature: { celsius: 'number' },
  fillingTemperature: { celsius: 'number' },
  wantedDough: { celsius: 'number' },
  water: { celsius: 'number', of: ['tap', 'bowl'] },
  rise: { percent: 'number', of: ['dough', 'levain'] },
  edge: { edge: ['flat', 'domed', 'fallen'], bubbles: ['none', 'some', 'many'] },
  growth: { grown: ['none', 'little', 'grown', 'unsure'] },
  poke: { dent: ['springs', 'slow', 'stays', 'unsure'] },
  weight: { grams: 'number', of: ['dough', 'piece', 'loaf'] },
  firstPiece: { grams: 'number' },
  crust: { colour: ['pale', 'golden', 'dark'] },
};

/** What a reading may carry besides. */
const EXTRAS: Readonly<Record<string, readonly unknown[]>> = {
  odd: [true],
  atLeast: [true],
  in: ['jar'],
  rim: ['below', 'level', 'above'],
};

/**
 * Reads one reading from outside: a row of a log, a file, a voice, a probe. A number that cannot
 * be (−200 °C) is refused; one that is merely odd is not, for the baker may have said it twice.
 *
 * @param path where the reading stands, for the reason: 'fact.reading'
 * @param ranges false for rows written before numbers had bounds: they are kept as they are
 */
export function readReading(value: unknown, path: string, ranges = true): ReadReading {
  const fail = (at: string, expected: string, got: unknown): ReadReading => ({
    reading: null,
    reason: { path: at, expected, got },
  });
  if (typeof value !== 'object' || value === null) return fail(path, 'a reading', value);
  const fields = value as Record<string, unknown>;
  const { what } = fields;
  const shape =
    typeof what === 'string' && Object.hasOwn(SHAPES, what)
      ? SHAPES[what as Reading['what']]
      : null;
  if (shape === null) return fail(`${path}.what`, Object.keys(SHAPES).join(', '), what);
  for (const [name, allowed] of Object.entries(EXTRAS)) {
    const got = fields[name];
    if (got !== undefined && !allowed.includes(got))
      return fail(`${path}.${name}`, `${allowed.join(', ')} or nothing`, got);
  }
  for (const [name, wanted] of Object.entries(shape)) {
    const got = fields[name];
    if (wanted === 'number') {
      if (!Number.isFinite(got)) return fail(`${path}.${name}`, 'a number', got);
    } else if (!wanted.includes(got as string)) {
      return fail(`${path}.${name}`, wanted.join(', '), got);
    }
  }
  const reading = value as Reading;
  const measure = Object.entries(shape).find(([, wanted]) => wanted === 'number')?.[0];
  if (ranges && measure !== undefined) {
    const { unit, possible } = READING_RANGES[slotOf(reading) as NumberSlot];
    const number = fields[measure] as number;
    if (number < possible.least || number > possible.most) {
      return fail(`${path}.${measure}`, `${possible.least} to ${possible.most} ${unit}`, number);
    }
  }
  return { reading };
}
