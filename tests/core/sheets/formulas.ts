import fc from 'fast-check';
import type { Filling, Formula } from '../../../src/core/formula/formula.ts';

/** Formulas by chance, and ways to break one, for schema, sheets, links and the reader alike. */

const tenths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((n) => n / 10);
const minutes = fc.integer({ min: 0, max: 4320 });
const name = fc
  .array(
    fc.constantFrom('dark', 'Rye', 'süß', 'olive', 'No. 4', '=1+1', 'lane;', '"whole"', '麦', '-5'),
    {
      minLength: 1,
      maxLength: 5,
    },
  )
  .map((words) => words.join(' '));

const parts = (least: number, most: number): fc.Arbitrary<number[]> =>
  fc
    .array(fc.integer({ min: 1, max: 40 }), { minLength: least, maxLength: most })
    .map((weights) => {
      const all = weights.reduce((sum, w) => sum + w, 0);
      const shares = weights.map((w) => Math.max(0.1, Math.floor((w / all) * 1000) / 10));
      const rest = 100 - shares.slice(1).reduce((sum, s) => sum + s, 0);
      return [Math.round(rest * 10) / 10, ...shares.slice(1)];
    });

const filling: fc.Arbitrary<Omit<Filling, 'id'>> = fc.record(
  {
    name,
    pct: tenths(0.1, 100),
    keeps: fc.constantFrom('shelf', 'hardCheese', 'perishable'),
    allergens: fc.array(fc.constantFrom('milk', 'sesame', 'tree nuts (hazelnut)'), {
      maxLength: 3,
    }),
    prepare: fc.uniqueArray(fc.constantFrom('soak', 'toast', 'drain', 'cut', 'coat'), {
      minLength: 1,
    }),
    group: name,
    soak: fc.record({ water: tenths(1, 1000) }),
    brings: fc.record({ salt: tenths(0, 50), water: tenths(0, 50) }),
    from: fc.constantFrom('shelf', 'fridge', 'freezer'),
    packet: fc.constant('read'),
  },
  { requiredKeys: ['name', 'pct', 'keeps', 'allergens'] },
);

/** Whatever formula the reader takes, most of them no bread. */
export const goodFormula: fc.Arbitrary<Formula> = fc
  .record({
    flours: parts(1, 8),
    names: fc.array(name, { minLength: 8, maxLength: 8 }),
    grains: fc.array(fc.constantFrom('wheat', 'wholeWheat', 'rye', 'spelt', 'barley'), {
      minLength: 8,
      maxLength: 8,
    }),
    packets: fc.array(
      fc.record(
        {
          allergens: fc.array(fc.constantFrom('soya', 'gluten (barley)'), { maxLength: 2 }),
          packet: fc.constant('read' as const),
        },
        { requiredKeys: [] },
      ),
      { minLength: 8, maxLength: 8 },
    ),
    fillings: fc.array(filling, { maxLength: 12 }),
    levainFlours: fc.option(parts(1, 3), { nil: null }),
    rest: fc.record(
      {
        id: fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/),
        version: fc.integer({ min: 1, max: 1_000_000 }),
        name,
        hydration: tenths(20, 200),
        secondWater: fc.integer({ min: 0, max: 90 }).map((n) => n / 100),
        salt: tenths(0, 10),
        piece: tenths(150, 2500),
        fillingsOf: fc.constantFrom('flour', 'dough'),
        convention: fc.constantFrom('whole', 'bowl'),
        notes: name,
        doughCelsius: tenths(15, 35),
      },
      { requiredKeys: ['id', 'version', 'name', 'hydration', 'secondWater', 'salt', 'piece'] },
    ),
    levain: fc.record({
      pff: fc.integer({ min: 1, max: 900 }).map((n) => n / 1000),
      hydration: tenths(0.4, 2),
      feed: fc.record({ seed: tenths(0.1, 100), flour: tenths(0.1, 100), water: tenths(0.1, 200) }),
    }),
    process: fc.record({
      rest: minutes,
      touches: fc.array(fc.record({ kind: fc.constantFrom('fold', 'laminate'), after: minutes }), {
        maxLength: 12,
      }),
      rise: tenths(10, 300),
      shaping: fc.constantFrom('round', 'scoop'),
      benchRest: minutes,
      counter: minutes,
      retard: minutes,
      warm: minutes,
      fridge: tenths(-5, 20),
      vessel: fc.constantFrom('pot', 'tin', 'stone'),
      preheat: minutes,
      lidded: minutes,
      open: minutes,
      recovery: minutes,
      cool: minutes,
    }),
  })
  .map(({ flours, names, grains, packets, fillings, levainFlours, rest, levain, process }) => {
    const all = flours.map((pct, i) => ({
      id: `flour-${i}`,
      name: names[i]!,
      grain: grains[i]!,
      pct,
      ...packets[i]!,
    }));
    const own = levainFlours?.length && levainFlours.length <= all.length ? levainFlours : null;
    return {
      ...rest,
      flours: all,
      fillings: fillings.map((one, i) => ({ id: `filling-${i}`, ...one })),
      levain: {
        ...levain,
        ...(own ? { flours: own.map((pct, i) => ({ id: `flour-${i}`, pct })) } : {}),
      },
      process,
    };
  });

type Json = Record<string, unknown>;

/** Every path to a value in it, objects and lists included. */
const pathsOf = (value: unknown, path: readonly string[] = []): (readonly string[])[] =>
  typeof value === 'object' && value !== null
    ? [
        ...(path.length > 0 ? [path] : []),
        ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key])),
      ]
    : [path];

const WRONG: readonly unknown[] = [
  ...[null, true, -1, 0, 1e9, 0.05, 1.5, '', ' ', 'x', '12,5', '50 %', '500 g', 'x'.repeat(81)],
  ...[[], {}, [1], { a: 1 }, ['x'], '../up', 'toString'],
];

/** Ways to break a formula in one place: a field put wrong, left out, named `format`, or doubled. */
export const breaks: fc.Arbitrary<(formula: Formula) => unknown> = fc
  .record({
    at: fc.nat(),
    wrong: fc.constantFrom(...WRONG),
    how: fc.constantFrom('put', 'put', 'put', 'drop', 'twin', 'more'),
  })
  .map(({ at, wrong, how }) => (formula) => {
    const copy = structuredClone(formula) as unknown as Json;
    const paths = pathsOf(copy);
    const path = paths[at % paths.length]!;
    let inner = copy;
    for (const key of path.slice(0, -1)) inner = inner[key] as Json;
    const last = path.at(-1)!;
    const list = inner[last];
    if (how === 'drop') {
      if (Array.isArray(inner)) inner.splice(Number(last), 1);
      else delete inner[last];
    } else if (how === 'twin' && Array.isArray(list) && list.length > 0) {
      list.push(list[0]);
    } else if (how === 'more' && Array.isArray(list)) {
      inner[last] = Array.from({ length: 200 }, (_, i) => (list[0] as unknown) ?? i);
    } else inner[last] = wrong;
    return copy;
  });
