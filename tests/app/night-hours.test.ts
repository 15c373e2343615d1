import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { HOUR, MINUTE, type Instant } from '../../src/core/units.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { formulaOf } from './support/hands.ts';
import { shownIn } from './support/shown-in.ts';
import { Tablet } from './support/tablet.ts';

/**
 * Nights whose hours are not sixty minutes. Zones and their rules are the IANA time zone database's, an open
 * standard, as the machine that runs this has it; hours are held against `Intl` in a zone that is named.
 */

// Against what hangs: the first of them fetches the models.
vi.setConfig({ testTimeout: 120_000 });

let tablet: Tablet;
beforeEach(() => serveFormulas());
afterEach(() => {
  tablet.leave();
  vi.unstubAllGlobals();
});

/** Loaves that go into the fridge at an instant; when they are to be looked at. */
const inFridge = async (zone: string, at: Instant): Promise<{ bake: string; look: Instant }> => {
  tablet = await Tablet.on(at, zone);
  const { house } = tablet;
  const formula = formulaOf('cherry-hazelnut');
  const order = { formula, loaves: 2, kitchen: 22, from: 'proof.retard' } as const;
  await tablet.did(house.begin(order));
  const [bake] = Object.keys(house.kitchen().bakes);
  tablet.pass(1_000);
  return { bake: bake!, look: house.kitchen().bakes[bake!]!.context.marks['look']! };
};
const shown = (at: Instant): string => `${tablet.house.day(at)} ${tablet.house.hour(at)}`;

/** As a clock whose hours never change would show it: so long after it was shown at the start. */
const naive = (zone: string, start: Instant, at: Instant): string =>
  shownIn('UTC', at + offset(zone, start));
const offset = (zone: string, at: Instant): number => {
  const parts = new Intl.DateTimeFormat('en-GB', {
    ...{ timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit' },
    ...{ hour: '2-digit', minute: '2-digit', second: '2-digit' },
  }).formatToParts(at);
  const of = (type: string): number => Number(parts.find((part) => part.type === type)!.value);
  return (
    Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'), of('second')) - at
  );
};

describe.each([
  ['Europe/Berlin', 'short of an hour', Date.UTC(2031, 2, 29, 19), 60],
  ['Europe/Berlin', 'an hour too long', Date.UTC(2031, 9, 25, 18), -60],
  ['Pacific/Auckland', 'short of an hour', Date.UTC(2031, 8, 27, 8), 60],
  ['Pacific/Auckland', 'an hour too long', Date.UTC(2031, 3, 5, 7), -60],
  ['Australia/Lord_Howe', 'short of half an hour', Date.UTC(2031, 9, 4, 9, 30), 30],
  ['Australia/Lord_Howe', 'half an hour too long', Date.UTC(2031, 3, 5, 9), -30],
] as const)('a night in %s that is %s', (zone, _, evening, minutes) => {
  it('cools the loaves as long as any, calls on the second, and shows the hour that stands then', async () => {
    const { bake, look } = await inFridge(zone, evening);
    expect(look - evening).toBeGreaterThan(9 * HOUR);
    // It is on show since the evening, and the hours change in between.
    expect(shown(look)).toBe(shownIn(zone, look));
    expect(shownIn(zone, look)).toBe(naive(zone, evening, look + minutes * MINUTE));
    tablet.pass(look - evening - 2_000);
    expect(stageOf(tablet.house.kitchen().bakes[bake]!)).toBe('proof.retard');
    tablet.pass(2_000);
    tablet.check();
    expect(tablet.heard).toMatchObject([{ truth: look - evening, late: 0, kind: 'look' }]);
    expect(tablet.house.leaps()).toEqual({ back: null, ahead: null });
    expect(tablet.house.told()).toEqual([]);
    expect(tablet.judge()).toEqual([]);
  });
});

it('a tablet that comes to another zone on the eve of the change counts on, and shows its hours', async () => {
  const evening = Date.UTC(2031, 2, 29, 19);
  const { look } = await inFridge('Europe/Berlin', evening);
  tablet.pass(2 * HOUR);
  // The same hour as Berlin till one in the night, and none of its summer.
  tablet.goTo('Africa/Lagos');
  tablet.check();
  expect(shown(look)).toBe(naive('Europe/Berlin', evening, look));
  tablet.goTo('Australia/Lord_Howe');
  tablet.check();
  tablet.pass(look - tablet.owed.now);
  expect(tablet.heard).toMatchObject([{ truth: look - evening, late: 0 }]);
  expect(tablet.judge()).toEqual([]);
});

it('a bake over the last second of 31 bits, 2038-01-19T03:14:08Z, is a bake like any', async () => {
  const last = 2 ** 31 * 1000;
  const evening = last - 7 * HOUR;
  const { bake, look } = await inFridge('UTC', evening);
  expect(look).toBeGreaterThan(last + HOUR);
  expect(shown(look)).toBe(shownIn('UTC', look));
  expect(tablet.house.date(look)).toBe('19 Jan 2038');
  tablet.pass(last - evening - 1_000);
  const until = last + 500;
  await tablet.take({ kind: 'timer', timer: 't1', name: 'other', until, call: 'act' });
  tablet.pass(1_000);
  expect(tablet.heard).toMatchObject([{ truth: until - evening, late: 0, kind: 'act' }]);
  await tablet.take({ kind: 'timerOff', timer: 't1' });
  // Slept over, set back over it, and read again from the disk behind it.
  tablet.sleep(10 * MINUTE);
  tablet.set(-HOUR);
  tablet.pass(1_000);
  await tablet.reopen(MINUTE);
  tablet.check();
  expect(tablet.house.told()).toEqual([]);
  expect(tablet.house.kitchen().bakes[bake]!.context.marks['look']).toBe(look);
  tablet.pass(look - tablet.owed.now);
  expect(tablet.heard.at(-1)).toMatchObject({ truth: look - evening, late: 0, kind: 'look' });
  await tablet.take({ kind: 'press', who: bake, act: 'loafReady' });
  tablet.check();
  expect(tablet.judge()).toEqual([]);
});
