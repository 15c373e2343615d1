import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { WAYS, type LookedWay } from '../harness/look-at.ts';
import { lookWalk } from '../harness/look-walk.ts';
import { LOOK_FILES } from '../harness/page-lists.ts';
import { everyWay, pairwise } from '../harness/ways.ts';

const pairs = (rows: readonly LookedWay[]): Set<string> =>
  new Set(
    rows.flatMap((row) => {
      const told = Object.values(row);
      return told.flatMap((a, i) => told.slice(i + 1).map((b, n) => `${i} ${a} ${i + n + 1} ${b}`));
    }),
  );

it('has a file for every list of pages', () => {
  const files = readdirSync(new URL('.', import.meta.url));
  expect(files.toSorted()).toEqual(
    [...LOOK_FILES, 'states', 'tongues'].map((name) => `${name}.test.ts`).toSorted(),
  );
});

it('has each choice meet each other in few ways', () => {
  const few = pairwise(WAYS);
  expect(few.length).toBeLessThanOrEqual(8);
  expect(pairs(few)).toEqual(pairs(everyWay(WAYS)));
});

it('holds sizes, gaps, cap heights, contrast, digits and axe in every kind of state, and small windows', async () => {
  const ways = pairwise(WAYS);
  const looked = await lookWalk((n) => [ways[n % ways.length]!]);
  expect(looked).toBeGreaterThanOrEqual(ways.length);
});
