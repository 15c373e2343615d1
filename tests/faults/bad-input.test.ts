import { expect, it } from 'vitest';
import { fuzz, type Fuzzed } from '../hostile/fuzz.ts';
import { READERS } from '../hostile/readers.ts';

/** Over all readers, each by its share; fewer where somebody only wants to see a seed again. */
const INPUTS = Number(process.env['INPUTS'] ?? 100_000);
/** A fresh one every time: what is red names it, and is made again by it (`inputOf`). */
const SEED = Number(process.env['SEED'] ?? Math.floor(Math.random() * 2 ** 31));

const each = INPUTS / READERS.reduce((all, { share = 1 }) => all + share, 0);
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

const line = (cells: readonly (string | number)[]): string =>
  cells.map((cell, n) => (n === 0 ? `${cell}`.padEnd(56) : `${cell}`.padStart(10))).join('');
/** Milliseconds are work of this process. */
const table = (rows: readonly Fuzzed[]): string =>
  [
    line(['reader', 'inputs', 'taken', 'refused', 'slowest ms']),
    ...rows.map(({ of, inputs, taken, refused, longest }) =>
      line([of, inputs, taken, refused, longest.toFixed(0)]),
    ),
    line([
      `all, seed ${SEED}`,
      sum(rows.map(({ inputs }) => inputs)),
      sum(rows.map(({ taken }) => taken)),
      sum(rows.map(({ refused }) => refused)),
      Math.max(...rows.map(({ longest }) => longest)).toFixed(0),
    ]),
  ].join('\n');

it(`${INPUTS} broken inputs do no harm to any reader`, async () => {
  const rows: Fuzzed[] = [];
  for (const reader of READERS)
    rows.push(await fuzz(reader, Math.ceil(each * (reader.share ?? 1)), SEED));
  console.log(table(rows));
  expect(sum(rows.map(({ inputs }) => inputs))).toBeGreaterThanOrEqual(INPUTS);
  // A few of each are enough to mend it by.
  expect(rows.flatMap(({ faults }) => faults.slice(0, 3))).toEqual([]);
  for (const [n, { of, taken, refused }] of rows.entries()) {
    expect.soft(taken, of).toBeGreaterThan(0);
    if (READERS[n]!.ends !== 'taken') expect.soft(refused, of).toBeGreaterThan(0);
  }
});
