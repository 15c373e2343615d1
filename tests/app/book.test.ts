import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import type { House } from '../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

const open = async (world: FakeWorld): Promise<House> => (await openBaking(world)).house;
const names = (house: House): string[] =>
  house.formulas().flatMap(({ formula }) => formula?.name ?? []);
const wheatOf = (house: House) => house.book().find(({ id }) => id === 'lane-wheat')!;
const offered = (house: House, id: string): Formula | undefined =>
  house
    .formulas()
    .flatMap(({ formula }) => formula ?? [])
    .find((one) => one.id === id);

describe('the Book of a house', () => {
  it('offers the version that was kept last, and opens again with it', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const wheat = wheatOf(house).latest;
    const kept = await house.keepFormula({ ...wheat, salt: 1.7 });
    expect(kept).toMatchObject({ id: 'lane-wheat', version: 2, salt: 1.7 });
    expect(offered(house, 'lane-wheat')).toMatchObject({ version: 2, salt: 1.7 });
    const again = await open(makeFakeWorld({ store: world.store, at: house.now() }));
    expect(wheatOf(again).versions.map(({ formula }) => formula.salt)).toEqual([wheat.salt, 1.7]);
    expect(offered(again, 'lane-wheat')?.version).toBe(2);
    expect(again.told()).toEqual([]);
  });

  it('bakes what it offers and leaves the version that was baked before as it was', async () => {
    const house = await open(makeFakeWorld());
    const wheat = wheatOf(house).latest;
    const order = { loaves: 1, kitchen: 22, from: 'bulk.proving' } as const;
    const first = (await house.begin({ ...order, formula: wheat }))!;
    await house.keepFormula({ ...wheat, salt: 1.7 });
    const second = (await house.begin({ ...order, formula: offered(house, 'lane-wheat')! }))!;
    const saltOf = (bake: string) => house.kitchen().bakes[bake]!.context.recipe.formula.salt;
    expect([saltOf(first), saltOf(second)]).toEqual([wheat.salt, 1.7]);
    expect(wheatOf(house).baked).toMatchObject({ version: 2 });
    expect(wheatOf(house).versions[0]!.formula).toEqual(wheat);
  });

  it('has own copies beside the others, and takes one off its list until it is kept again', async () => {
    const house = await open(makeFakeWorld());
    const wheat = wheatOf(house).latest;
    const copy = { ...wheat, id: 'evening-wheat', name: 'Evening wheat', version: 9 };
    expect(await house.keepFormula(copy)).toMatchObject({ version: 1 });
    expect(names(house)).toContain('Evening wheat');
    await house.dropFormula('evening-wheat');
    expect(names(house)).not.toContain('Evening wheat');
    expect(house.book().find(({ id }) => id === 'evening-wheat')).toMatchObject({ off: true });
    expect(await house.keepFormula(copy)).toMatchObject({ version: 2 });
    expect(names(house)).toContain('Evening wheat');
  });

  it('says so where a formula could not be read back, and writes nothing', async () => {
    const house = await open(makeFakeWorld());
    const wheat = wheatOf(house).latest;
    expect(await house.keepFormula({ ...wheat, flours: [] })).toBeNull();
    expect(house.records()).toEqual([]);
    expect(offered(house, 'lane-wheat')).toEqual(wheat);
  });

  it('is the same list while facts come that are none of it, and a page that only shows writes nothing', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const before = house.formulas();
    await house.take({ kind: 'starter', did: 'named', name: 'counter' });
    expect(house.records()).toHaveLength(1);
    expect(house.formulas()).toBe(before);
    const shows = await open(makeFakeWorld({ store: world.store, holds: false, at: house.now() }));
    expect(await shows.keepFormula({ ...wheatOf(shows).latest, salt: 1.7 })).toBeNull();
    expect(wheatOf(shows).versions).toHaveLength(1);
  });

  it('goes out with the log, and in', async () => {
    const house = await open(makeFakeWorld());
    await house.keepFormula({ ...wheatOf(house).latest, salt: 1.7 });
    const text = [{ kitchenFile: 1, equipment: house.equipment() }, ...house.records()]
      .map((line) => `${JSON.stringify(line)}\n`)
      .join('');
    const other = makeFakeWorld({ at: house.now() });
    const empty = await createRoot(() => openHouse(other));
    const { file } = await empty.readFile(text);
    await empty.takeFile(file!);
    const again = await open(makeFakeWorld({ store: other.store, at: house.now() }));
    expect(offered(again, 'lane-wheat')).toMatchObject({ version: 2, salt: 1.7 });
    expect(again.records()).toEqual(house.records());
  });
});
