import { describe, expect, it } from 'vitest';

/** Sources and modules of the folders whose docstrings show numbers as `call // → value`. */
const SOURCES = import.meta.glob<string>(
  [
    '../../src/core/units.ts',
    '../../src/core/{circle,clock,day,formula,heat,kitchen,log,oven,readiness,sheets}/*.ts',
    '../../src/core/{day/laid,circle/label,log/chart}/*.ts',
  ],
  { query: '?raw', import: 'default', eager: true },
);
const MODULES = import.meta.glob<Record<string, unknown>>(
  [
    '../../src/core/units.ts',
    '../../src/core/{circle,clock,day,formula,heat,kitchen,log,oven,readiness,sheets}/*.ts',
    '../../src/core/{day/laid,circle/label,log/chart}/*.ts',
  ],
  { eager: true },
);

/** A tag and the lines under it that are run. */
const EXAMPLE = /@example\n((?: \* .+ \/\/ → .+\n)+)/g;

interface Example {
  readonly path: string;
  readonly call: string;
  readonly value: string;
}

const examplesOf = (path: string, source: string): Example[] =>
  [...source.matchAll(EXAMPLE)].flatMap(([, lines]) =>
    (lines ?? '')
      .trimEnd()
      .split('\n')
      .map((line) => {
        const [call = '', value = ''] = line.replace(/^ \* /, '').split(' // → ');
        return { path, call, value };
      }),
  );

/** Evaluates an expression with a module's exports in sight. */
const evaluate = (expression: string, names: Record<string, unknown>): unknown =>
  new Function(...Object.keys(names), `return (${expression});`)(
    ...Object.values(names),
  ) as unknown;

/** A printed number is right to half its last digit; a whole one to 0.01. */
const tolerance = (printed: string): number => {
  const decimals = /\.(\d+)$/.exec(printed)?.[1]?.length ?? 0;
  return decimals === 0 ? 0.01 : 0.5 * 10 ** -decimals + 1e-12;
};

const examples = Object.entries(SOURCES).flatMap(([path, source]) => examplesOf(path, source));

describe('the examples in the docstrings', () => {
  it.each(examples)('$call is $value', ({ path, call, value }) => {
    const ours = evaluate(call, MODULES[path] ?? {});
    const printed = evaluate(value, {});
    if (typeof printed !== 'number') return expect(ours).toEqual(printed);
    expect(typeof ours).toBe('number');
    return expect(Math.abs((ours as number) - printed)).toBeLessThanOrEqual(tolerance(value));
  });

  it('are all of the form that is run here', () => {
    const tags = (form: RegExp): string[] =>
      Object.entries(SOURCES).flatMap(([path, source]) =>
        [...source.matchAll(form)].map(() => path),
      );
    const tagged = tags(/@example/g);
    expect(tags(EXAMPLE)).toEqual(tagged);
    expect(tagged.length).toBeGreaterThan(20);
  });
});
