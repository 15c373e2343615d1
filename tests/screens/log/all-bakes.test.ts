import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { makeAllBakes, readAhead } from '../../../src/screens/log/all-bakes.ts';
import { begun, noted, rowsOf } from '../../core/log/support/log-rows.ts';

const here = rowsOf([begun('a'), noted('a', 'good'), begun('b')]);
const there = rowsOf([begun('z'), noted('z', 'over')], { id: 'g' });

const open = (first: readonly LogRecord[], rehearsal: number | null = null) => {
  const [records, setRecords] = createSignal(first);
  const bakes = createRoot(() => makeAllBakes({ records, rehearsal }, { others: () => [there] }));
  return { bakes, setRecords };
};
const starts = (bakes: readonly { readonly start: string }[]) => bakes.map(({ start }) => start);

describe('all bakes', () => {
  it('are this kitchen’s and other tablets’', () => {
    expect(starts(open(here).bakes())).toEqual(['f2', 'f0', 'g0']);
  });

  it('are a rehearsal’s own alone in a rehearsal', () => {
    expect(starts(open(here, 60).bakes())).toEqual(['f2', 'f0']);
  });

  it('stay the same list while a new row says nothing of a bake, and the same lines where it does', () => {
    const { bakes, setRecords } = open(here);
    const before = bakes();
    const heard = rowsOf([{ kind: 'heard', call: 'b rang' }], { from: 3 }).map((row) => ({
      ...row,
      position: here.at(-1)!.position,
    }));
    setRecords([...here, ...heard]);
    expect(bakes()).toBe(before);
    setRecords([...here, ...heard, ...rowsOf([noted('b', 'pale')], { from: 4 })]);
    expect(bakes()[0]).toMatchObject({ start: 'f2', turned: 'pale' });
    expect(bakes().slice(1)).toEqual(before.slice(1));
    expect(bakes()[1]).toBe(before[1]);
  });

  it('may be read ahead in pieces, and never back behind what was read', () => {
    let asked = 0;
    const watched = here.map((row) =>
      Object.defineProperty({ ...row }, 'fact', { get: () => ((asked += 1), row.fact) }),
    );
    const [records] = createSignal<readonly LogRecord[]>(watched);
    expect(readAhead({ records }, 2)).toBe(true);
    const house = { records, rehearsal: null };
    const bakes = createRoot(() => makeAllBakes(house, { others: () => [] }));
    expect(starts(bakes())).toEqual(['f2', 'f0']);
    expect(readAhead({ records }, 2)).toBe(true);
    expect(readAhead({ records }, 4)).toBe(false);
    expect(asked).toBe(watched.length);
  });
});
