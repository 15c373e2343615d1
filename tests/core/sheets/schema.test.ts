import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv, type SchemaObject } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFormulas, writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { rawFormula, SHIPPED, shippedFormula } from '../formula/shipped.ts';
import { breaks, goodFormula } from './formulas.ts';

const schema = JSON.parse(
  readFileSync(
    fileURLToPath(new URL('../../../docs/formula.schema.json', import.meta.url)),
    'utf8',
  ),
) as SchemaObject;

type Part = { readonly id?: string; readonly pct?: number } | null;
interface Whole {
  readonly flours?: readonly Part[];
  readonly levain?: { readonly flours?: readonly Part[] };
}

// The reader counts UTF-16 units, as JavaScript does.
const ajv = new Ajv({ unicode: false, logger: false });
/** A keyword of ours. What is no such list or object at all the other keywords refuse. */
const keyword = (name: string, type: 'array' | 'object', holds: (data: never) => boolean): void => {
  ajv.addKeyword({
    keyword: name,
    type,
    validate: (_: boolean, data: unknown) => holds(data as never),
  });
};
keyword('sumsTo100', 'array', (parts: readonly Part[]) => {
  const sum = parts.reduce((all, part) => all + (part?.pct ?? 0), 0);
  return Math.abs(sum - 100) <= 0.01;
});
keyword('uniqueIds', 'array', (parts: readonly Part[]) => {
  return new Set(parts.map((part) => part?.id)).size === parts.length;
});
keyword('partsOfAWhole', 'object', ({ salt, water }: { salt: number; water: number }) => {
  return salt + water <= 100;
});
keyword('levainFloursKnown', 'object', ({ flours, levain }: Whole) => {
  const own = levain?.flours;
  if (!Array.isArray(own) || !Array.isArray(flours)) return true;
  const ids = flours.map((flour: Part) => flour?.id);
  return own.every((part: Part) => ids.includes(part?.id));
});
const validate = ajv.compile(schema);
const isValid = (value: unknown): boolean => validate(value);
const isRead = (value: unknown): boolean => readFormulas(JSON.stringify(value)).formulas !== null;

describe('the schema and the reader', () => {
  it.each(SHIPPED)('both take %s, bare and in a frame', (name) => {
    const raw = rawFormula(name);
    expect([isValid(raw), isRead(raw)]).toEqual([true, true]);
    const text = writeFormulas([shippedFormula(name)]);
    expect(isValid(JSON.parse(text))).toBe(true);
    expect(readFormulas(text)).toEqual({ formulas: [shippedFormula(name)] });
  });

  it('both take whatever formula there may be', () => {
    fc.assert(
      fc.property(fc.array(goodFormula, { minLength: 1, maxLength: 3 }), (formulas) => {
        const text = writeFormulas(formulas);
        expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
        expect(readFormulas(text).reason ?? null).toBeNull();
        expect(readFormulas(text).formulas).toEqual(formulas);
      }),
      { numRuns: 100, seed: 7 },
    );
  });

  it('say the same of what was broken in one place', () => {
    let refused = 0;
    fc.assert(
      fc.property(goodFormula, breaks, (formula, broken) => {
        const value = broken(formula);
        const read = isRead(value);
        expect(isValid(value), JSON.stringify(value)).toBe(read);
        if (!read) {
          refused += 1;
          const { reason } = readFormulas(JSON.stringify(value));
          expect(reason!.path).not.toBe('');
          expect(reason!.expected).not.toBe('');
          expect(reason!.got).not.toBe('');
        }
      }),
      { numRuns: 800, seed: 11 },
    );
    expect(refused, 'of 800').toBeGreaterThan(400);
  });

  it('refuse a frame that is not ours, is newer, is empty or has one bad formula', () => {
    const formulas = [
      rawFormula('lane-wheat'),
      { ...(rawFormula('lane-wheat') as object), salt: -1 },
    ];
    const good = { format: 'loafward-formulas', formatVersion: 1, formulas: formulas.slice(0, 1) };
    expect([isValid(good), isRead(good)]).toEqual([true, true]);
    for (const [value, path, expected, got] of [
      [{ ...good, format: 'bread' }, 'format', '"loafward-formulas"', '"bread"'],
      [{ ...good, formatVersion: 2 }, 'formatVersion', '1', '2'],
      [{ ...good, formulas: [] }, 'formulas', 'a list of 1 to 500', 'a list of 0'],
      [{ ...good, formulas }, 'formulas[1].salt', 'a number 0 to 10', '-1'],
      [{ ...good, formulas: ['x'] }, 'formulas[0]', 'an object', '"x"'],
    ] as const) {
      expect(isValid(value)).toBe(false);
      expect(readFormulas(JSON.stringify(value)).reason).toEqual({ path, expected, got });
    }
  });

  it('a text that is no JSON, or too long, is told as such', () => {
    expect(readFormulas('{"id":').reason).toMatchObject({ path: 'the file', expected: 'JSON' });
    const { reason } = readFormulas(' '.repeat(2_000_001));
    expect(reason).toMatchObject({ expected: 'at most 2000000 characters', got: '2000001' });
    expect(
      readFormulas(`\uFEFF${writeFormulas([shippedFormula('lane-today')])}`).formulas,
    ).toHaveLength(1);
  });
});
