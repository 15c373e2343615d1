import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { quietUntil } from '../../src/app/quiet-until.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeSilentSound } from '../fakes/silent-sound.ts';
import { makeFakeWorld } from '../fakes/world.ts';

const NIGHT = { from: 22 * 60, to: 6 * 60 };
/** Eight in the evening on the tablet's wall, wherever it hangs. */
const EVENING = new Date(2031, 4, 3, 20).getTime();

/** Against what hangs on a busy machine, and no measure of anything. */
const PATIENCE = { timeout: 20_000 };

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());

/** A house in the evening with one bake that stands at `from`. */
const houseWith = async (from: BakeStage, at = EVENING) => {
  const speaker = makeHeardSpeaker();
  const world = { ...makeFakeWorld({ at }), speaker };
  const house: House = await createRoot(() => openHouse(world));
  await vi.waitFor(() => expect(house.formulas()).toHaveLength(9), PATIENCE);
  const formula = house
    .formulas()
    .find((found) => found.formula?.name === 'Cherry and hazelnut')!.formula!;
  await house.begin({ formula, loaves: 2, kitchen: 22, from });
  return { house, world, said: () => speaker.said.map(({ words }) => words).join(' ') };
};
/** Everything of the feed is in: the levain rises. */
const feed = async (house: House): Promise<void> => {
  for (const { item } of house.kitchen().bakes['bake-1']!.context.recipe.lines.feed)
    await house.take({ kind: 'press', who: 'bake-1', act: 'answer', item, value: 'in' });
  expect(house.ringing()).toBeNull();
};
/** Turns to a deadline: it is shown, and whatever is said with it is said. */
const turnTo = async (opened: Awaited<ReturnType<typeof houseWith>>, at: number): Promise<void> => {
  const { world } = opened;
  world.clock.turn(at - world.clock.now());
  world.beat();
  await vi.waitFor(() => undefined);
  await new Promise((then) => setTimeout(then));
};
const rings = ({ world }: Awaited<ReturnType<typeof houseWith>>) => world.sound.ringing();

describe('in the quiet hours', () => {
  it('a levain to look at is seen and not heard, and rings gently as they end', async () => {
    const opened = await houseWith('levain.feed');
    const { house, world } = opened;
    house.equip({ quiet: NIGHT });
    await feed(house);
    const [look] = world.clock.pending();
    const morning = new Date(2031, 4, 4, 6).getTime();
    expect(look).toBeGreaterThan(new Date(2031, 4, 3, 22).getTime());
    expect(look).toBeLessThan(morning);
    // Laid ahead on the audio clock for the morning, not for the look.
    expect(rings(opened)).toMatchObject([{ kind: 'look', inMs: morning - world.clock.now() }]);
    const before = opened.said();
    await turnTo(opened, look!);
    expect(house.ringing()).toMatchObject({ stage: 'levain.look' });
    expect(opened.said()).toBe(before);
    expect(rings(opened)).toHaveLength(1);
    const laid = world.sound.rung.length;
    await turnTo(opened, morning + MINUTE);
    expect(world.sound.rung).toHaveLength(laid);
    // Heard by a touch, it is silent.
    expect(house.hush()).toBe(true);
    await vi.waitFor(() => expect(house.ringing()).toBeNull());
    expect(rings(opened)).toEqual([]);
  });

  it('dough that rises is heard, before a look that waits and is only seen', async () => {
    const opened = await houseWith('levain.feed');
    const { house, world } = opened;
    house.equip({ quiet: { from: 20 * 60, to: 19 * 60 } });
    await feed(house);
    await turnTo(opened, world.clock.pending()[0]!);
    expect(house.ringing()).toMatchObject({ who: 'bake-1', stage: 'levain.look' });
    const formula = house.formulas().find(({ formula: f }) => f?.name === 'Olive and seed')!;
    await house.begin({
      formula: formula.formula!,
      loaves: 2,
      kitchen: 22,
      from: 'proof.counter' as never,
    });
    const other = Object.keys(house.kitchen().bakes).find((id) => id !== 'bake-1')!;
    const due = world.clock.pending()[0]!;
    // What will be heard next is laid, and not what waits for the morning.
    expect(rings(opened)).toMatchObject([{ inMs: due - world.clock.now() }]);
    const before = opened.said();
    await turnTo(opened, due);
    expect(house.ringing()).toMatchObject({ who: other });
    expect(rings(opened)).toHaveLength(1);
    await vi.waitFor(() => expect(opened.said()).not.toBe(before), PATIENCE);
    house.hush();
    await vi.waitFor(() => expect(house.ringing()).toMatchObject({ who: 'bake-1' }));
    expect(rings(opened)).toMatchObject([{ kind: 'act' }]);
    await turnTo(opened, world.clock.pending()[0]!);
    expect(house.ringing()).toMatchObject({ who: other, stage: 'proof.toFridge' });
    await vi.waitFor(() => expect(opened.said()).toContain('loaves into the fridge'));
    house.hush();
    await vi.waitFor(() => expect(house.ringing()).toMatchObject({ who: 'bake-1' }));
    expect(rings(opened)).toMatchObject([{ kind: 'look' }]);
    expect(rings(opened)[0]!.inMs).toBeGreaterThan(HOUR);
  });

  it('begin and end by the baker’s choice, at once', async () => {
    const opened = await houseWith('levain.feed');
    const { house, world } = opened;
    await feed(house);
    const [look] = world.clock.pending();
    expect(rings(opened)).toMatchObject([{ inMs: look! - world.clock.now() }]);
    house.equip({ quiet: NIGHT });
    await vi.waitFor(() => expect(rings(opened)[0]!.inMs).toBeGreaterThan(look! - EVENING));
    house.equip({ quiet: null });
    await vi.waitFor(() => expect(rings(opened)[0]!.inMs).toBe(look! - world.clock.now()));
    expect(rings(opened)).toHaveLength(1);
  });

  it('hold for a page that is opened in the middle of them', async () => {
    const first = await houseWith('levain.feed');
    first.house.equip({ quiet: NIGHT });
    await feed(first.house);
    const [look] = first.world.clock.pending();
    first.world.clock.turn(look! + MINUTE - first.world.clock.now());
    const { settings, store, clock } = first.world;
    const world = { ...makeFakeWorld(), settings, store, clock };
    await createRoot(() => openHouse(world));
    const morning = new Date(2031, 4, 4, 6).getTime();
    expect(world.sound.ringing()).toMatchObject([{ inMs: morning - clock.now() }]);
  });
});

it('a page that was opened in them, and may not sound by itself, asks for its sound as they end', async () => {
  const first = await houseWith('levain.feed');
  first.house.equip({ quiet: NIGHT });
  await feed(first.house);
  const [look] = first.world.clock.pending();
  const { settings, store, clock } = first.world;
  clock.turn(look! + MINUTE - clock.now());
  const sound = makeSilentSound('locked');
  const arm = vi.fn(async () => sound.state());
  const speaker = makeHeardSpeaker();
  const world = { ...makeFakeWorld(), settings, store, clock, speaker, sound: { ...sound, arm } };
  const house: House = await createRoot(() => openHouse(world));
  world.beat();
  await vi.dynamicImportSettled();
  expect([house.unheard(), arm.mock.calls.length]).toEqual([false, 0]);
  clock.turn(new Date(2031, 4, 4, 6).getTime() + 1_000 - clock.now());
  world.beat();
  await vi.waitFor(() => expect(house.unheard()).toBe(true), PATIENCE);
  clock.turn(5_000);
  world.beat();
  expect(arm).toHaveBeenCalledTimes(1);
  // The touch that brings it is no answer, and what rings is said.
  arm.mockImplementation(() => sound.arm());
  expect(house.hush()).toBe(true);
  await vi.waitFor(() => expect(speaker.said).not.toEqual([]), PATIENCE);
  expect(house.ringing()).toMatchObject({ stage: 'levain.look' });
  expect(house.records().at(-1)!.fact.kind).not.toBe('heard');
});

describe('in the quiet hours of a tablet that comes to another zone', () => {
  const before = process.env['TZ'];
  afterEach(() => {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  });

  it('a look waits for the morning there, or is heard at once where it is morning already', async () => {
    process.env['TZ'] = 'Europe/Berlin';
    const opened = await houseWith('levain.feed', Date.UTC(2031, 4, 3, 20));
    const { house, world } = opened;
    house.equip({ quiet: { from: 22 * 60, to: 9 * 60 } });
    await feed(house);
    await turnTo(opened, world.clock.pending()[0]!);
    const { since } = house.ringing()!;
    const rung = () => rings(opened).map(({ inMs }) => inMs);
    const asLaid = world.clock.now();
    // It is seven in the morning in Berlin, five in Reykjavik, ten in Karachi.
    expect(new Date(since).getHours()).toBe(7);
    process.env['TZ'] = 'Atlantic/Reykjavik';
    world.beat();
    expect(rung()).toEqual([Date.UTC(2031, 4, 4, 9) - asLaid]);
    process.env['TZ'] = 'Asia/Karachi';
    world.beat();
    expect(rung()).toEqual([since - asLaid]);
  });
});

describe('until when a call is quiet', () => {
  const call = (stage: string) => ({ id: 'x', who: 'a', stage, kind: 'look' as const, since: 0 });
  const until = quietUntil(NIGHT, (at) => at);

  it('is the very minute in which the hours end, to the second', () => {
    const at = new Date(2031, 4, 3, 23, 17, 42, 5).getTime();
    expect(until(call('levain.look'), at)).toBe(new Date(2031, 4, 4, 6).getTime());
    expect(until(call('levain.look'), new Date(2031, 4, 4, 6).getTime())).toBeNull();
  });

  it.each(['lift', 'judge', 'turnOff', 'turnOn', 'bulk.look', 'proof.toFridge', 'mix.salt'])(
    '%s is never quiet',
    (stage) => {
      expect(until(call(stage), new Date(2031, 4, 4, 2).getTime())).toBeNull();
    },
  );
});
