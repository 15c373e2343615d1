import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { makeLogStore } from '../../src/adapters/store.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { COURSE_HERE } from '../fakes/course-here.ts';
import { judgeBy } from '../../src/app/judge.ts';
import { makeKeeper, type Kept } from '../../src/app/keeper.ts';
import { makeKitchenTime } from '../../src/app/kitchen-time.ts';
import { openLog } from '../../src/app/open-log.ts';
import { makeTurnedClock } from '../fakes/turned-clock.ts';
import { plainStarter, plainWait } from '../machines/support/waits.ts';
import { RECIPE } from '../machines/support/recipe.ts';

/**
 * A disk that is cut off: what a transaction wrote is on it only if it asked for `strict`; the rest
 * stood in the system's memory and is gone. `forced` overrules what is asked for, to show that the
 * simulation bites.
 */
let lost: number[];
let forced: IDBTransactionDurability | null;

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  lost = [];
  forced = null;
  const real = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    names,
    mode,
    options,
  ) {
    const tx = real.call(this, names, mode, options);
    const durability = forced ?? options?.durability;
    if (mode === 'readwrite' && durability !== 'strict') {
      const store = tx.objectStore('log');
      const add = store.add.bind(store);
      vi.spyOn(tx, 'objectStore').mockReturnValue(
        Object.assign(store, {
          add: (value: unknown, key: number) => {
            lost.push(key);
            return add(value, key);
          },
        }),
      );
    }
    return tx;
  });
});
afterEach(() => vi.restoreAllMocks());

const DEEDS: readonly Deed[] = [
  {
    kind: 'start',
    bake: 'a',
    loaves: ['a1', 'a2'],
    from: 'mix.first',
    recipe: RECIPE,
    kitchen: 24,
  },
  ...(['mixed', 'rested'] as const).map((act): Deed => ({ kind: 'press', who: 'a', act })),
  ...['salt', 'secondWater'].map((item): Deed => ({
    kind: 'press',
    who: 'a',
    act: 'answer',
    item,
    value: 'in',
  })),
  ...(['workedIn', 'unmeasured', 'touchNow', 'folded'] as const).map((act): Deed => ({
    kind: 'press',
    who: 'a',
    act,
  })),
];

/** Bakes until the cut, and says what was shown as taken and what the disk then holds. */
async function bakeUntil(cut: number): Promise<{ shown: number; kept: number }> {
  const store = makeLogStore(`cut-${cut}-${forced}`);
  const opened = await openLog(store, MACHINES);
  const clock = makeTurnedClock(1_000_000);
  let shown: Kept | null = null;
  let n = 0;
  const keeper = makeKeeper({
    opened,
    reopen: () => openLog(store, MACHINES),
    store,
    machines: MACHINES,
    course: COURSE_HERE,
    judge: () => Promise.resolve(judgeBy(plainWait, plainStarter)),
    time: makeKitchenTime(clock, null),
    ids: { device: 'counter', next: () => `id${(n += 1)}` },
    onChange: (kept) => (shown = kept),
    onSay: () => undefined,
    later: () => () => undefined,
  });
  for (const deed of DEEDS.slice(0, cut)) expect(await keeper.take(deed)).toBe('taken');
  const rows = (await store.load()) as { seq: number }[];
  const kept = rows.filter(({ seq }) => !lost.includes(seq)).length;
  return { shown: (shown as Kept | null)?.records.length ?? 0, kept };
}

it('loses no acknowledged fact, wherever the power is cut', async () => {
  for (let cut = 1; cut <= DEEDS.length; cut += 1) {
    lost = [];
    const { shown, kept } = await bakeUntil(cut);
    expect(shown).toBe(cut);
    expect(kept).toBe(cut);
  }
});

it('would lose all of them with relaxed writes: the simulation bites', async () => {
  forced = 'relaxed';
  const { shown, kept } = await bakeUntil(DEEDS.length);
  expect(shown).toBe(DEEDS.length);
  expect(kept).toBe(0);
});
