import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { lendRecords } from '../../src/app/rehearsal.ts';
import { makeRehearsalClock } from '../../src/adapters/rehearsal-clock.ts';
import { tellNotice } from '../../src/core/speech/tell-notice.ts';
import type { House } from '../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

/** A kitchen in earnest whose baker has a bread of their own, and one taken off the list. */
const kitchen = async (): Promise<FakeWorld> => {
  const world = makeFakeWorld();
  const { house, formula } = await openBaking(world);
  const own = { ...formula, id: 'evening-loaf', name: 'Evening loaf', salt: 1.7 };
  await house.keepFormula(own);
  await house.keepFormula({ ...own, salt: 1.8 });
  await house.dropFormula('barley-tin');
  return world;
};
/** Another page on the same tablet: its own log, the fast clock, and the earnest log to read. */
const rehearse = async (earnest: FakeWorld): Promise<{ world: FakeWorld; house: House }> => {
  const world = makeFakeWorld({ at: earnest.clock.now() });
  const clock = makeRehearsalClock(world.clock, 60, world.clock.now());
  const lent = () => lendRecords({ load: () => earnest.store.load() });
  const house = await createRoot(() => openHouse({ ...world, clock, lent }));
  await vi.waitFor(() => expect(house.book().length).toBeGreaterThan(0), { timeout: 20_000 });
  return { world, house };
};
const names = (house: House) => house.formulas().flatMap(({ formula }) => formula?.name ?? []);

describe('a rehearsal', { timeout: 30_000 }, () => {
  it('offers the baker’s own breads in their latest version, and none that is off the list', async () => {
    const { house } = await rehearse(await kitchen());
    expect(house.rehearsal).toBe(60);
    expect(names(house)).toContain('Evening loaf');
    expect(names(house)).not.toContain('Barley tin');
    const own = house.formulas().find(({ file }) => file === 'evening-loaf')!.formula!;
    expect([own.version, own.salt]).toEqual([2, 1.8]);
  });

  it('bakes one and changes it in its own log; the real one is not written to', async () => {
    const earnest = await kitchen();
    const rows = structuredClone([...earnest.store.rows]);
    const writes = earnest.store.writes();
    const { world, house } = await rehearse(earnest);
    const formula = house.formulas().find(({ file }) => file === 'evening-loaf')!.formula!;
    const bake = await house.begin({ formula, loaves: 1, kitchen: 22, from: 'mix.first' });
    expect(house.kitchen().bakes[bake!]!.context.recipe.formula.name).toBe('Evening loaf');
    expect(await house.keepFormula({ ...formula, salt: 2 })).toMatchObject({ version: 3 });
    expect(house.formulas().find(({ file }) => file === 'evening-loaf')!.formula!.salt).toBe(2);
    expect([...world.store.rows.keys()]).toEqual([1, 2]);
    expect([...earnest.store.rows]).toEqual(rows);
    expect(earnest.store.writes()).toBe(writes);
    const { house: again } = await openBaking(
      makeFakeWorld({ store: earnest.store, at: earnest.clock.now() }),
    );
    expect(again.book().find(({ id }) => id === 'evening-loaf')!.versions).toHaveLength(2);
    expect(Object.keys(again.kitchen().bakes)).toEqual([]);
  });

  it('says so where the real log cannot be read, and has the breads of the program', async () => {
    const earnest = await kitchen();
    earnest.store.fail('closed', 1);
    const { house } = await rehearse(earnest);
    expect(names(house)).toContain('Barley tin');
    const lost = house.formulas().flatMap((one) => (one.formula === null ? one.reason : []));
    expect(lost.map((reason) => tellNotice(reason, house.ways()))).toEqual([
      'Your own breads could not be read. Open the rehearsal once more.',
    ]);
  });

  it('reads as far as rows are sound', async () => {
    const earnest = await kitchen();
    earnest.store.rows.set(2, { seq: 2, strange: true });
    const { house } = await rehearse(earnest);
    const own = house.formulas().find(({ file }) => file === 'evening-loaf')!.formula!;
    expect([own.version, own.salt]).toEqual([1, 1.7]);
  });
});
