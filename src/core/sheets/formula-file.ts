import { withKeptAllergens } from '../circle/label/kept-allergens.ts';
import type { Formula } from '../formula/formula.ts';
import { describe, type Misread } from '../formula/read-fields.ts';
import { readFormula } from '../formula/read-formula.ts';

/** What a file of formulas says of itself. */
export const FORMAT = 'loafward-formulas';
/** Raised when a file may hold what an older reader would lose. */
export const FORMAT_VERSION = 1;

/** Most formulas in one file, and most characters of it. Judgement: far more than a baker has. */
export const MOST_FORMULAS = 500;
export const MOST_CHARACTERS = 2_000_000;

export type ReadFormulas =
  | { readonly formulas: readonly Formula[]; readonly reason?: never }
  | { readonly formulas: null; readonly reason: Misread };

const refuse = (path: string, expected: string, got: string): ReadFormulas => ({
  formulas: null,
  reason: { path, expected, got },
});

/** One or more formulas as a file's text, of the form that docs/formula-format.md tells. */
export const writeFormulas = (formulas: readonly Formula[]): string =>
  `${JSON.stringify({ format: FORMAT, formatVersion: FORMAT_VERSION, formulas }, null, 2)}\n`;

/** Nothing before it may be an object's own `toString`: a file's object has its own fields alone. */
const own = (value: object, name: string): unknown =>
  Object.hasOwn(value, name) ? (value as Record<string, unknown>)[name] : undefined;

function readAll(list: unknown): ReadFormulas {
  if (!Array.isArray(list) || list.length === 0 || list.length > MOST_FORMULAS) {
    return refuse('formulas', `a list of 1 to ${MOST_FORMULAS}`, describe(list));
  }
  const formulas: Formula[] = [];
  for (const [i, one] of (list as unknown[]).entries()) {
    const { formula, reason } = { reason: null, ...readFormula(one) };
    if (formula === null) {
      const path = reason!.path === 'the file' ? '' : `.${reason!.path}`;
      return { formulas: null, reason: { ...reason!, path: `formulas[${i}]${path}` } };
    }
    formulas.push(withKeptAllergens(formula));
  }
  return { formulas };
}

/**
 * Reads a file of formulas: ours with its mark, or one formula bare. Everything in it is good, or
 * nothing is taken: null with the path, what was expected there and what came. A newer form is
 * refused by its number. Allergens in the baker's own tongue come out as they are kept. Never throws.
 */
export function readFormulas(text: string): ReadFormulas {
  if (text.length > MOST_CHARACTERS) {
    return refuse('the file', `at most ${MOST_CHARACTERS} characters`, String(text.length));
  }
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refuse('the file', 'JSON', describe(text));
  }
  const isMarked = typeof value === 'object' && value !== null && Object.hasOwn(value, 'format');
  if (!isMarked) {
    const { formula, reason } = { reason: null, ...readFormula(value) };
    if (formula === null) return { formulas: null, reason: reason! };
    return { formulas: [withKeptAllergens(formula)] };
  }
  const file = value as object;
  const format = own(file, 'format');
  if (format !== FORMAT) return refuse('format', `"${FORMAT}"`, describe(format));
  const version = own(file, 'formatVersion');
  if (version !== FORMAT_VERSION) {
    return refuse('formatVersion', String(FORMAT_VERSION), describe(version));
  }
  return readAll(own(file, 'formulas'));
}
