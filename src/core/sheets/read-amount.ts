import { gramsOfOunces, gramsOfPounds, type Grams } from '../units.ts';
import { textOf, type Cell, type Table } from './table.ts';

/** A weight's unit as sheets write it. */
export type WeightUnit = 'g' | 'kg' | 'oz' | 'lb';
/** Which sign parts whole from tenths. */
export type DecimalSign = 'point' | 'comma';

/** A number of a sheet with the unit its cell names; weights are in grams, null: the cell names none. */
export interface SheetAmount {
  readonly value: number;
  readonly unit: '%' | 'g' | null;
}

const GRAMS: Readonly<Record<WeightUnit, (value: number) => Grams>> = {
  g: (value) => value,
  kg: (value) => value * 1000,
  oz: gramsOfOunces,
  lb: gramsOfPounds,
};

export const gramsOf = (value: number, unit: WeightUnit): Grams => GRAMS[unit](value);

const UNITS: readonly (readonly [RegExp, WeightUnit])[] = [
  [/^(g|gr|gram|grams|gramm)\.?$/i, 'g'],
  [/^(kg|kilo|kilos|kilograms?)\.?$/i, 'kg'],
  [/^(oz|ounces?)\.?$/i, 'oz'],
  [/^(lb|lbs|pounds?)\.?$/i, 'lb'],
];

export const unitOf = (word: string): WeightUnit | null =>
  UNITS.find(([pattern]) => pattern.test(word))?.[1] ?? null;

/** A number, blanks between its thousands allowed, and what stands behind it. */
const NUMBER = /^([+-]?)(\d[\d.,\s]*|[.,]\d+)\s*(%|[a-z]+\.?)?$/i;

/** Thousands stand in threes, parted by blanks or by the other sign; or in one row. */
const BY_POINT = /^(\d{1,3}(?:[,\s]\d{3})+|\d*)(?:\.(\d+))?$/;
const BY_COMMA = /^(\d{1,3}(?:[.\s]\d{3})+|\d*)(?:,(\d+))?$/;

/**
 * What parts whole from tenths in digits with points and commas; null where both readings are right,
 * as in 1,500. Of two signs the last parts the tenths; a sign that comes twice parts thousands.
 */
function signIn(digits: string): DecimalSign | null | 'none' {
  const [, , last] = /^(.*)([.,])[^.,]*$/.exec(digits) ?? [];
  if (last === undefined) return 'none';
  const sign: DecimalSign = last === ',' ? 'comma' : 'point';
  const other: DecimalSign = last === ',' ? 'point' : 'comma';
  if (digits.includes(last === ',' ? '.' : ',')) return sign;
  if (digits.indexOf(last) !== digits.lastIndexOf(last)) return other;
  return /^[1-9]\d{0,2}[.,]\d{3}$/.test(digits) ? null : sign;
}

/** The sign that a whole sheet shows it parts tenths with; null: it shows none, or both. */
export function decimalSignOf(table: Table): DecimalSign | null {
  const seen = new Set<DecimalSign>();
  for (const cell of table.flat()) {
    const digits = typeof cell === 'string' ? NUMBER.exec(cell.trim())?.[2] : undefined;
    const sign = digits === undefined ? 'none' : signIn(digits.trim());
    if (sign !== 'none' && sign !== null) seen.add(sign);
  }
  return seen.size === 1 ? ([...seen][0] ?? null) : null;
}

/** Whether any cell may be read two ways, as 1,500 may. */
export const hasTwoReadings = (table: Table): boolean =>
  table.flat().some((cell) => {
    const digits = typeof cell === 'string' ? NUMBER.exec(cell.trim())?.[2] : undefined;
    return digits !== undefined && signIn(digits.trim()) === null;
  });

/**
 * The number in a cell, with tenths behind a point or a comma, a percent sign or a unit behind it. Null:
 * no number of 0 or more stands there, or it reads two ways and `sign` is not known.
 *
 * @example
 * readAmount('12,5 %') // → { value: 12.5, unit: '%' }
 * readAmount('1.250,5 g') // → { value: 1250.5, unit: 'g' }
 * readAmount('2 lb') // → { value: 907.18474, unit: 'g' }
 * readAmount('1,500', 'comma') // → { value: 1.5, unit: null }
 * readAmount('1,500') // → null
 * readAmount('-3') // → null
 */
export function readAmount(
  cell: Cell | undefined,
  sign: DecimalSign | null = null,
): SheetAmount | null {
  if (typeof cell === 'number') {
    return Number.isFinite(cell) && cell >= 0 ? { value: cell, unit: null } : null;
  }
  const [, minus, digits, word] = NUMBER.exec(textOf(cell)) ?? [];
  if (digits === undefined || minus === '-') return null;
  const own = signIn(digits.trim());
  const parts = own ?? sign;
  if (parts === null) return null;
  const [, whole, tenths] = (parts === 'comma' ? BY_COMMA : BY_POINT).exec(digits.trim()) ?? [];
  if (whole === undefined) return null;
  const value = Number(`${whole.replace(/\D/g, '') || '0'}.${tenths ?? '0'}`);
  if (word === undefined) return { value, unit: null };
  if (word === '%') return { value, unit: '%' };
  const unit = unitOf(word);
  return unit === null ? null : { value: gramsOf(value, unit), unit: 'g' };
}
