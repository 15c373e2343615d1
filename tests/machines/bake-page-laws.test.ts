import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { withdrawnIn } from '../../src/core/log/bake-rows.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { callsOf } from '../../machines/kitchen/settle.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { MACHINE_VERSION, MACHINES, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { commandRuns } from './support/commands.ts';
import { Driver } from './support/driver.ts';

/** What holds of the page of every bake that a log has; how many there are. */
function checkPages(records: readonly LogRecord[], kitchen: Kitchen): number {
  const withdrawn = withdrawnIn(records);
  const live = positionOf(kitchen);
  const bakes = new Set(
    records.flatMap(({ fact }) =>
      fact.kind === 'start' && !withdrawn.has(fact.id) ? [fact.bake] : [],
    ),
  );
  for (const bake of bakes) {
    const page = bakePage(records, bake, { withdrawn, live })!;
    const { stages, calls, loads, from, to, begun, out, end } = page;
    stages.slice(1).forEach((stay, n) => expect(stages[n]!.to).toBe(stay.from));
    for (const stay of stages) expect(stay.to ?? live.now).toBeGreaterThanOrEqual(stay.from);
    expect(out).toBeLessThanOrEqual(begun);
    for (const load of loads) expect(load.out ?? live.now).toBeGreaterThanOrEqual(load.in);
    for (const call of calls) expect(call.late ?? 0).toBeGreaterThanOrEqual(0);
    expect(new Set(calls.map(({ id }) => id)).size).toBe(calls.length);
    expect(to === null || to >= from).toBe(true);
    if (end.how !== 'open') continue;
    expect(stages.at(-1)!.stage).toBe(live.bakes[bake]!.stage);
    const rings = callsOf(kitchen).filter(({ who }) => who === bake);
    expect(calls.map(({ id }) => id)).toEqual(expect.arrayContaining(rings.map(({ id }) => id)));
  }
  return bakes.size;
}

const GOLDEN = new URL('golden/', import.meta.url);
const logs = readdirSync(GOLDEN).filter((name) => /^walk-\d+\.json$/.test(name));

describe('the pages of every bake', () => {
  it.each(logs)('of the golden log %s hold together', (name) => {
    const rows = JSON.parse(readFileSync(new URL(name, GOLDEN), 'utf8')) as unknown[];
    const records = rows.map((row) => readRecord(row, MACHINE_VERSION).record!);
    const { kitchen, trouble } = replay(records, MACHINES);
    expect(trouble).toBeNull();
    expect(checkPages(records, kitchen)).toBeGreaterThan(0);
  });

  it('of random hands hold together, whatever they took back', () => {
    let bakes = 0;
    fc.assert(
      fc.property(commandRuns(120), (run) => {
        const driver = new Driver();
        driver.run(run);
        bakes += checkPages(driver.hand.records, driver.hand.kitchen);
      }),
      { seed: 20_310_503, numRuns: 30, unbiased: true },
    );
    expect(bakes).toBeGreaterThan(15);
  }, 120_000);
});
