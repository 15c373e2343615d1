import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import { add, NONE, tableOf, type Tally } from '../app/support/tally.ts';
import { twoDays } from '../app/support/two-days.ts';
import { serveFormulas } from '../fakes/baking.ts';

const HOW_MANY = 300;
/** Fresh ones each time, told so that a red run can be walked again. What is meant: tests/app/two-days.test.ts. */
const FIRST = Date.now() % 2 ** 31;

const rows: Record<string, Tally> = {};
beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(() => console.log(tableOf(rows)));

it.each(Array.from({ length: HOW_MANY }, (_, n) => FIRST + n))(
  'every alarm of two days is heard once, at its instant or at waking, seed %i',
  async (seed) => {
    const { faults, night, tally, bakes } = await twoDays(seed);
    rows[night] = add(rows[night] ?? NONE, tally);
    expect(faults).toEqual([]);
    expect(tally).toMatchObject({ wrong: 0, lost: 0, double: 0 });
    expect(bakes).toBeGreaterThan(0);
    expect(tally.owed).toBeGreaterThan(0);
  },
);
