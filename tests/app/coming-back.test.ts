import { createMemo, createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

const DAY = 24 * HOUR;

beforeEach(() => {
  serveFormulas();
});
afterEach(() => vi.unstubAllGlobals());

const open = (world: FakeWorld): Promise<House> => createRoot(() => openHouse(world));

/** A dough that rests half an hour, from now on. */
const resting = async (world: FakeWorld) => {
  const { house, begin } = await openBaking(world);
  const id = await begin('mix.first');
  await house.take({ kind: 'press', who: id, act: 'mixed' });
  world.beat();
  return { house, id };
};
const stage = (house: House, id: string) => stageOf(house.kitchen().bakes[id]!);
const sounding = (world: FakeWorld) => world.sound.ringing();

describe('coming back', () => {
  it.each([
    ['47 minutes', 47 * MINUTE],
    ['9 hours', 9 * HOUR],
    ['a month', 30 * DAY],
  ])(
    'after %s: one beat shows the hour, the late call and since when, rung once',
    async (_, gone) => {
      const world = makeFakeWorld();
      const { house, id } = await resting(world);
      const left = house.now();
      // No timer ran meanwhile; the first thing that runs is the page being shown.
      world.clock.sleep(gone);
      world.beat();
      expect(house.now()).toBe(left + gone);
      expect(stage(house, id)).toBe('mix.salt');
      expect(house.kitchen().attention.context.calls).toMatchObject([
        { stage: 'mix.salt', since: left + 30 * MINUTE },
      ]);
      expect(house.away()).toEqual({ from: left, to: left + gone });
      expect(world.sound.rung).toHaveLength(1);
      expect(sounding(world)).toHaveLength(1);
      world.beat();
      world.beat();
      expect(world.sound.rung).toHaveLength(1);
      house.readBack();
      world.beat();
      expect(house.away()).toBeNull();
    },
  );

  it('calls as many minutes after the clock was set back as were left before', async () => {
    const world = makeFakeWorld();
    const { house, id } = await resting(world);
    world.clock.turn(10 * MINUTE);
    world.beat();
    world.clock.set(world.clock.now() - 5 * HOUR);
    world.beat();
    const left = house.kitchen().bakes[id]!.context.marks['end']! - house.now();
    expect(left).toBe(20 * MINUTE);
    expect(sounding(world).map(({ inMs }) => inMs)).toEqual([left]);
    world.clock.turn(left - 1);
    expect(stage(house, id)).toBe('mix.rest');
    world.clock.turn(1);
    expect(stage(house, id)).toBe('mix.salt');
    expect(house.leaps().back?.by).toBe(-5 * HOUR);
  });

  it.each([1 * HOUR, 365 * DAY])(
    'stays usable when the clock is set forward by %d ms and put right again',
    async (wrong) => {
      const world = makeFakeWorld();
      const { house, id } = await resting(world);
      world.clock.set(world.clock.now() + wrong);
      world.beat();
      expect(stage(house, id)).toBe('mix.salt');
      world.clock.set(world.clock.now() - wrong);
      world.beat();
      await house.take({ kind: 'press', who: id, act: 'answer', item: 'salt', value: 'in' });
      expect(house.records()).toHaveLength(3);
      expect(house.hour(house.now())).toMatch(/^\d\d:\d\d$/);
      const rows = JSON.stringify(house.records());
      // No instant is missing; a task that is not done has none.
      expect(rows.replaceAll(/"(done|called)":null/g, '')).not.toContain('null');
      const again = await open(makeFakeWorld({ store: world.store, at: world.clock.now() }));
      expect(stage(again, id)).toBe('mix.salt');
      expect(again.told().map(({ id: what }) => what)).not.toContain('log');
    },
  );

  it('shows the hours of the zone it has come to, and the same minutes left', async () => {
    const before = process.env['TZ'];
    try {
      process.env['TZ'] = 'UTC';
      const world = makeFakeWorld({ at: Date.UTC(2031, 4, 3, 22, 10) });
      const { house, id } = await resting(world);
      const end = house.kitchen().bakes[id]!.context.marks['end']!;
      const shown = createRoot(() => createMemo(() => `${house.day(end)} ${house.hour(end)}`));
      expect(shown()).toBe('Sat 22:40');
      process.env['TZ'] = 'Asia/Tokyo';
      world.beat();
      expect(shown()).toBe('Sun 07:40');
      expect(house.kitchen().bakes[id]!.context.marks['end']).toBe(end);
      expect(sounding(world).map(({ inMs }) => inMs)).toEqual([30 * MINUTE]);
      expect(house.told()).toEqual([]);
    } finally {
      if (before === undefined) delete process.env['TZ'];
      else process.env['TZ'] = before;
    }
  });

  it('shows the hours of a zone that is as far from Greenwich today, and not tomorrow', async () => {
    const before = process.env['TZ'];
    try {
      process.env['TZ'] = 'Europe/Berlin';
      let zone = 'Europe/Berlin';
      const world = {
        ...makeFakeWorld({ at: Date.UTC(2031, 2, 30, 0, 40) }),
        zone: () => zone,
      };
      const { house, id } = await resting(world);
      const end = house.kitchen().bakes[id]!.context.marks['end']!;
      const shown = createRoot(() => createMemo(() => house.hour(end)));
      expect(shown()).toBe('03:10');
      zone = process.env['TZ'] = 'Africa/Lagos';
      world.beat();
      expect(shown()).toBe('02:10');
    } finally {
      if (before === undefined) delete process.env['TZ'];
      else process.env['TZ'] = before;
    }
  });

  it('has the hours follow the clock that was set back, wherever they are shown already', async () => {
    const world = makeFakeWorld({ at: new Date(2031, 4, 3, 12).getTime() });
    const { house, id } = await resting(world);
    const end = house.kitchen().bakes[id]!.context.marks['end']!;
    const shown = createRoot(() =>
      createMemo(() => [house.hour(end), house.day(end), house.wall(end) - house.midnight(end)]),
    );
    expect(shown()[0]).toBe('12:30');
    world.clock.set(world.clock.now() - 24 * HOUR - 5 * HOUR);
    world.beat();
    expect(shown()).toEqual(['07:30', 'Fri', end - 29 * HOUR - house.midnight(end)]);
  });

  it.each([
    ['the night that is an hour short', Date.UTC(2031, 2, 30, 0, 45), '01:45', '03:15'],
    ['the night that is an hour long', Date.UTC(2031, 9, 26, 0, 45), '02:45', '02:15'],
  ])('waits half an hour through %s', async (_, at, from, until) => {
    const before = process.env['TZ'];
    try {
      process.env['TZ'] = 'Europe/Copenhagen';
      const world = makeFakeWorld({ at });
      const { house, id } = await resting(world);
      const end = house.kitchen().bakes[id]!.context.marks['end']!;
      expect([house.hour(house.now()), house.hour(end)]).toEqual([from, until]);
      world.clock.turn(30 * MINUTE - 1);
      expect(stage(house, id)).toBe('mix.rest');
      world.clock.turn(1);
      expect(stage(house, id)).toBe('mix.salt');
      expect(house.told()).toEqual([]);
    } finally {
      if (before === undefined) delete process.env['TZ'];
      else process.env['TZ'] = before;
    }
  });

  it('says on a page that does not hold the kitchen that another does, and leaves the log alone', async () => {
    const world = makeFakeWorld();
    const { id } = await resting(world);
    const other = makeFakeWorld({ store: world.store, at: world.clock.now(), holds: false });
    const house = await open(other);
    const rows = house.records().length;
    other.clock.sleep(9 * HOUR);
    other.beat();
    await vi.waitFor(() => expect(house.told().map(({ id: what }) => what)).toEqual(['pages']));
    await house.take({ kind: 'press', who: id, act: 'answer', item: 'salt', value: 'in' });
    expect(house.hush()).toBe(false);
    expect(await world.store.load()).toHaveLength(rows);
    expect(other.sound.rung).toEqual([]);
  });
});
