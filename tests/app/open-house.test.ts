import { readFileSync } from 'node:fs';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { openHouse } from '../../src/app/open-house.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { trouble } from '../../src/core/speech/words/trouble.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

const file = (name: string) => readFileSync(`assets/formulas/${name}`, 'utf8');

let broken: string | null;
beforeEach(() => {
  broken = null;
  vi.stubGlobal('fetch', async (path: string) => {
    const name = path.split('/').at(-1) ?? '';
    return new Response(broken !== null && name.startsWith('lane') ? broken : file(name));
  });
});
afterEach(() => vi.unstubAllGlobals());

const open = (world: FakeWorld): Promise<House> => createRoot(() => openHouse(world));
const formulas = async (house: House) => {
  await vi.waitFor(() => expect(house.formulas()).toHaveLength(9), { timeout: 20_000 });
  return house.formulas();
};
const begin = async (house: House, from: 'mix.first' | 'proof.retard' = 'mix.first') => {
  const [found] = await formulas(house);
  const id = await house.begin({
    formula: found!.formula!,
    loaves: 2,
    kitchen: 22,
    from: from as never,
  });
  return id!;
};
const stage = (house: House, id: string) => stageOf(house.kitchen().bakes[id]!);
const texts = (house: House) => house.told().map(({ text }) => text);

describe('the house', () => {
  it('begins a bake, keeps it, and opens again where it stood', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const id = await begin(house);
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    expect(stage(house, id)).toBe('mix.rest');
    const again = await open(makeFakeWorld({ store: world.store, at: world.clock.now() + MINUTE }));
    expect(stage(again, id)).toBe('mix.rest');
    expect(again.told()).toEqual([]);
  });

  it('stops speaking at a touch though nothing rings, and the touch does its own work', async () => {
    const speaker = makeHeardSpeaker();
    const house = await open({ ...makeFakeWorld(), speaker });
    house.say('Fold the dough.');
    await vi.waitFor(() => expect(speaker.said).toHaveLength(1));
    expect(house.hush()).toBe(false);
    await vi.waitFor(() => expect(speaker.said[0]!.ended).toBe('stopped'));
  });

  it('tells that words could not be heard, once, until it is closed', async () => {
    const speaker = makeHeardSpeaker();
    const house = await open({ ...makeFakeWorld(), speaker });
    await vi.waitFor(() => expect(house.told()).toEqual([]));
    speaker.lose();
    speaker.lose();
    await vi.waitFor(() => expect(texts(house)).toEqual([trouble.voiceLost]));
    house.told()[0]!.action!.press();
    expect(house.told()).toEqual([]);
    speaker.lose();
    expect(house.told()).toEqual([]);
  });

  it('goes on in memory when there is no store, and says what to do', async () => {
    const world = makeFakeWorld();
    world.store.fail('closed', 1000);
    const house = await open(world);
    const id = await begin(house);
    expect(stage(house, id)).toBe('mix.first');
    expect(texts(house).join(' ')).toContain('save it as a file');
    expect(house.unsaved()).toBe(1);
  });

  it('says before any press that the log could not be opened, and has it once it can', async () => {
    const world = makeFakeWorld();
    const id = await begin(await open(world));
    let reloads = 0;
    const again = makeFakeWorld({ store: world.store });
    world.store.fail('closed', 1);
    const house = await open({ ...again, reload: () => void (reloads += 1) });
    await vi.waitFor(() => expect(texts(house)).toEqual([trouble.storeUnread]));
    house.told()[0]!.action!.press();
    expect(reloads).toBe(1);
    // Whoever begins anew without a look at it begins nothing: the log is there, and is shown.
    world.store.fail(null);
    const { fact } = world.store.rows.get(1) as { fact: Deed };
    await house.take({ ...fact, bake: 'another' } as Deed);
    expect(Object.keys(house.kitchen().bakes)).toEqual([id]);
    expect(world.store.rows.size).toBe(1);
  });

  it('goes on behind a row that nobody can read, and says that it is not saved', async () => {
    const world = makeFakeWorld();
    const id = await begin(await open(world));
    world.store.rows.set(2, { seq: 2 });
    const house = await open(makeFakeWorld({ store: world.store }));
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    expect(stage(house, id)).toBe('mix.rest');
    expect(house.unsaved()).toBe(1);
    expect(texts(house)).toContain(trouble.storeClosed);
    expect(texts(house)).not.toContain(trouble.storeTaken);
    expect(world.store.rows.get(2)).toEqual({ seq: 2 });
  });

  it('shows a broken formula file with where and what, and keeps the others', async () => {
    broken = '{"id": "lane-wheat", "flours": 7';
    const house = await open(makeFakeWorld());
    const found = await formulas(house);
    expect(found[0]!.formula).not.toBeNull();
    expect(found.find(({ formula }) => formula === null)).toMatchObject({
      formula: null,
      reason: { key: 'formulaUnreadable' },
    });
  });

  it('asks for the hour when the tablet’s clock went back, and the bake goes on', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const id = await begin(house);
    world.clock.set(world.clock.now() - 60 * MINUTE);
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    world.beat();
    expect(house.leaps().back?.by).toBe(-60 * MINUTE);
    expect(stage(house, id)).toBe('mix.rest');
  });

  it('hushes a call by the first touch, once, and leaves it on the screen', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const id = await begin(house);
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    expect(house.hush()).toBe(false);
    world.clock.turn(30 * MINUTE);
    expect(house.ringing()).toMatchObject({ kind: 'act', stage: 'mix.salt' });
    expect(house.hush()).toBe(true);
    expect(world.sound.ringing()).toEqual([]);
    await vi.waitFor(() => expect(house.ringing()).toBeNull(), { timeout: 20_000 });
    expect(house.kitchen().attention.context.calls).toHaveLength(1);
  });

  it('offers a new version only when nothing bakes', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const id = await begin(house);
    const taken = vi.fn();
    world.offer(taken);
    expect(house.told()).toEqual([]);
    await house.take({ kind: 'press', who: id, act: 'ended' });
    const [offer] = house.told();
    expect(offer!.text).toContain('new version');
    offer!.action!.press();
    expect(taken).toHaveBeenCalledOnce();
  });

  it('only shows the kitchen in a page that does not hold it', async () => {
    const world = makeFakeWorld();
    const id = await begin(await open(world));
    const other = await open(makeFakeWorld({ store: world.store, holds: false }));
    await other.take({ kind: 'press', who: id, act: 'mixed' });
    expect(stage(other, id)).toBe('mix.first');
    await vi.waitFor(() =>
      expect(texts(other).join(' ')).toContain('Another page has the kitchen'),
    );
  });

  it('asks where the dough is when the log names a stage nobody knows', async () => {
    const world = makeFakeWorld();
    const id = await begin(await open(world));
    const row = structuredClone([...world.store.rows.values()].at(-1)) as {
      position: { bakes: Record<string, { stage: string }> };
    };
    row.position.bakes[id]!.stage = 'mix.unheard';
    world.store.rows.set(1, row);
    const house = await open(makeFakeWorld({ store: world.store }));
    expect(house.lost()?.bakes).toMatchObject([{ id }]);
    await house.lost()!.put({ [id]: 'shape.divide' });
    expect(house.lost()).toBeNull();
    expect(stage(house, id)).toBe('shape.divide');
    const again = await open(makeFakeWorld({ store: world.store }));
    expect(again.lost()).toBeNull();
    expect(stage(again, id)).toBe('shape.divide');
  });

  it('goes on from the last stored place where log and machines part', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const id = await begin(house);
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    const row = structuredClone(world.store.rows.get(2)) as {
      position: { bakes: Record<string, { stage: string; marks: object }> };
    };
    row.position.bakes[id]!.stage = 'mix.salt';
    world.store.rows.set(2, row);
    const again = await open(makeFakeWorld({ store: world.store, at: world.clock.now() }));
    expect(stage(again, id)).toBe('mix.salt');
    expect(texts(again).join(' ')).toContain('row 2 is off');
    expect([...world.store.rows.keys()]).toEqual([1, 2, 3]);
  });

  it('refuses by name a log that a newer version wrote, and writes nothing over it', async () => {
    const world = makeFakeWorld();
    const id = await begin(await open(world));
    world.store.rows.set(2, { seq: 2, machineVersion: 99, fact: {}, position: {} });
    const house = await open(makeFakeWorld({ store: world.store }));
    await house.take({ kind: 'press', who: id, act: 'mixed' });
    expect(texts(house).join(' ')).toContain('version 99');
    expect(world.store.rows.get(2)).toMatchObject({ machineVersion: 99 });
  });
});
