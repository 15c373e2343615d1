import { describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import type { Deed, Fact } from '../../src/core/records/fact.ts';
import { MINUTE } from '../../src/core/units.ts';
import { COURSE_HERE } from '../fakes/course-here.ts';
import { judgeBy } from '../../src/app/judge.ts';
import { makeKeeper, type Kept } from '../../src/app/keeper.ts';
import { makeKitchenTime } from '../../src/app/kitchen-time.ts';
import { openLog } from '../../src/app/open-log.ts';
import { makeMemoryStore } from '../fakes/memory-store.ts';
import { makeTurnedClock } from '../fakes/turned-clock.ts';
import { plainStarter, plainWait } from '../machines/support/hand.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const START: Deed = {
  kind: 'start',
  bake: 'a',
  loaves: ['a1', 'a2'],
  from: 'mix.first',
  recipe: RECIPE,
  kitchen: 24,
};
const press = (act: string, extra: object = {}): Deed =>
  ({ kind: 'press', who: 'a', act, ...extra }) as Deed;

async function open(rows = makeMemoryStore(), at = 1_000 * MINUTE) {
  const clock = makeTurnedClock(at);
  const opened = await openLog(rows, MACHINES);
  const last = opened.records.at(-1)?.fact ?? null;
  const shown: Kept[] = [];
  const laters: (() => void)[] = [];
  const judged: Fact[] = [];
  let n = opened.records.length;
  const keeper = makeKeeper({
    opened,
    reopen: () => openLog(rows, MACHINES),
    store: rows,
    machines: MACHINES,
    course: COURSE_HERE,
    judge: () =>
      Promise.resolve((kitchen, machines, bare) => {
        judged.push(bare);
        return judgeBy(plainWait, plainStarter)(kitchen, machines, bare);
      }),
    time: makeKitchenTime(clock, last),
    ids: { device: 'counter', next: () => `id${(n += 1)}` },
    onChange: (kept) => shown.push(kept),
    onSay: () => undefined,
    later: (_, then) => {
      laters.push(then);
      return () => void laters.splice(laters.indexOf(then), 1);
    },
  });
  return { clock, rows, keeper, shown, laters, judged };
}
const bakeStage = (kept: Kept) => stageOf(kept.kitchen.bakes['a']!);

describe('the keeper of the log', () => {
  it('writes a press before it is shown, one record each', async () => {
    const { keeper, rows, shown } = await open();
    const go = rows.pause();
    const taking = keeper.take(START);
    await Promise.resolve();
    expect(shown).toEqual([]);
    go();
    expect(await taking).toBe('taken');
    expect(rows.rows.size).toBe(1);
    expect(bakeStage(shown.at(-1)!)).toBe('mix.first');
  });

  it('foresees a deed without writing, showing or numbering anything, and judges its fact anew', async () => {
    const { keeper, rows, shown, clock, judged } = await open();
    await keeper.take(START);
    const [before, many] = [keeper.kept(), shown.length];
    keeper.foresee(press('mixed'));
    keeper.foresee(press('folded'));
    await new Promise(setImmediate);
    expect(judged.map(({ id }) => id)).toEqual(['id1', 'foreseen', 'foreseen']);
    expect(keeper.kept()).toBe(before);
    expect([rows.rows.size, shown.length]).toEqual([1, many]);
    clock.turn(5 * MINUTE);
    await keeper.take(press('mixed'));
    expect(judged.at(-1)).toMatchObject({ id: 'id2', at: clock.now() });
    expect(rows.rows.get(2)).toMatchObject({ fact: { id: 'id2', at: clock.now() } });
  });

  it('tells nobody of what goes wrong in foreseeing', async () => {
    const { keeper, judged } = await open();
    await keeper.take(START);
    judged.push = () => {
      throw new Error('The model gives mix.rest no end.');
    };
    keeper.foresee(press('mixed'));
    await new Promise(setImmediate);
    expect(keeper.kept().trouble).toBeNull();
  });

  it('makes one fact of five quick presses of the same act', async () => {
    const { keeper, rows } = await open();
    await keeper.take(START);
    const outcomes = await Promise.all([1, 2, 3, 4, 5].map(() => keeper.take(press('mixed'))));
    expect(outcomes).toEqual(['taken', 'refused', 'refused', 'refused', 'refused']);
    expect(rows.rows.size).toBe(2);
  });

  it('refuses a repeatable act pressed on a screen that has moved on', async () => {
    const { keeper } = await open();
    await keeper.take({ ...START, from: 'bulk.fold' } as Deed);
    const seen = keeper.kept().kitchen.seq;
    await keeper.take(press('folded', { seen }));
    await keeper.take(press('touchNow'));
    expect(await keeper.take(press('spread', { seen }))).toBe('refused');
    expect(await keeper.take(press('spread'))).toBe('taken');
  });

  it('shows a fact after 250 ms though it is not yet written, and says so', async () => {
    const { keeper, rows, shown, laters } = await open();
    const go = rows.pause();
    const taking = keeper.take(START);
    await new Promise(setImmediate);
    laters[0]!();
    expect(shown.at(-1)).toMatchObject({ slow: true, unsaved: 1 });
    expect(bakeStage(shown.at(-1)!)).toBe('mix.first');
    go();
    await taking;
    expect(shown.at(-1)).toMatchObject({ slow: false, unsaved: 0 });
  });

  it('goes on in memory when the disk is full, and writes all of it later', async () => {
    const { keeper, rows } = await open();
    await keeper.take(START);
    rows.fail('full', 2);
    expect(await keeper.take(press('mixed'))).toBe('taken');
    expect(await keeper.take(press('rested'))).toBe('taken');
    expect(keeper.kept()).toMatchObject({ unsaved: 2, trouble: 'full' });
    expect(bakeStage(keeper.kept())).toBe('mix.salt');
    await keeper.retry();
    expect(keeper.kept()).toMatchObject({ unsaved: 0, trouble: null });
    expect([...rows.rows.keys()]).toEqual([1, 2, 3]);
  });

  it('writes the whole log again when the store was cleared under it', async () => {
    const { keeper, rows } = await open();
    await keeper.take(START);
    rows.rows.clear();
    expect(await keeper.take(press('mixed'))).toBe('taken');
    expect([...rows.rows.keys()]).toEqual([1, 2]);
  });

  it('reads the log anew and offers the press again when another page wrote', async () => {
    const one = await open();
    await one.keeper.take(START);
    const other = await open(one.rows);
    await other.keeper.take(press('mixed'));
    expect(await one.keeper.take(press('mixed'))).toBe('again');
    expect(bakeStage(one.keeper.kept())).toBe('mix.rest');
  });

  it('goes on in memory behind a row that nobody can read, and writes nothing over it', async () => {
    const first = await open();
    await first.keeper.take(START);
    const bad = { seq: 2, fact: 'torn' };
    first.rows.rows.set(2, bad);
    const { keeper, rows } = await open(first.rows);
    expect(await keeper.take(press('mixed'))).toBe('taken');
    expect(await keeper.take(press('rested'))).toBe('taken');
    expect(bakeStage(keeper.kept())).toBe('mix.salt');
    expect(keeper.kept()).toMatchObject({ unsaved: 2, trouble: 'taken' });
    await keeper.retry();
    expect(keeper.kept().unsaved).toBe(2);
    expect([...rows.rows.values()].slice(1)).toEqual([bad]);
  });

  it('lets what is due fall due on a tick, and comes back the same from the store', async () => {
    const { clock, keeper, rows } = await open();
    await keeper.take(START);
    await keeper.take(press('mixed'));
    clock.turn(29 * MINUTE);
    keeper.tick();
    expect(bakeStage(keeper.kept())).toBe('mix.rest');
    clock.turn(MINUTE);
    keeper.tick();
    expect(bakeStage(keeper.kept())).toBe('mix.salt');
    const { kitchen, trouble } = await openLog(rows, MACHINES);
    expect(trouble).toBeNull();
    expect(kitchen.seq).toBe(2);
  });

  it('keeps kitchen time from running back when the wall does, and replays the same', async () => {
    const { clock, keeper, rows } = await open();
    await keeper.take(START);
    await keeper.take(press('mixed'));
    clock.turn(40 * MINUTE);
    keeper.tick();
    clock.set(clock.now() - 60 * MINUTE);
    await keeper.take(press('answer', { item: 'salt', value: 'in' }));
    const facts = keeper.kept().records.map((record) => record.fact);
    expect(facts.at(-1)!.at).toBeGreaterThanOrEqual(facts[1]!.at + 40 * MINUTE);
    expect(replay(keeper.kept().records, MACHINES).trouble).toBeNull();
    expect((await openLog(rows, MACHINES)).trouble).toBeNull();
  });
});

describe('opening a log', () => {
  it('says when there is no store', async () => {
    const rows = makeMemoryStore();
    rows.fail('closed', 1);
    expect((await openLog(rows, MACHINES)).trouble).toEqual({ kind: 'closed' });
  });

  it('keeps what is sound before a row that is none', async () => {
    const { keeper, rows } = await open();
    await keeper.take(START);
    rows.rows.set(2, { seq: 2 });
    const opened = await openLog(rows, MACHINES);
    expect(opened.trouble).toMatchObject({ kind: 'unreadable', seq: 2 });
    expect(opened.records).toHaveLength(1);
  });

  it('says where the machines and the log part', async () => {
    const { keeper, rows } = await open();
    await keeper.take(START);
    await keeper.take(press('mixed'));
    const row = structuredClone(rows.rows.get(2)) as {
      position: { bakes: { a: { stage: string } } };
    };
    row.position.bakes.a.stage = 'mix.salt';
    rows.rows.set(2, row);
    expect((await openLog(rows, MACHINES)).trouble).toMatchObject({ kind: 'differs', seq: 2 });
  });
});
