import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { DAY, HOUR, MINUTE, type Instant } from '../../src/core/units.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { formulaOf } from './support/hands.ts';
import { Tablet } from './support/tablet.ts';

/** A Saturday at eight in Berlin. */
const MORNING = Date.UTC(2031, 4, 3, 6);

// Against what hangs: the first of them fetches the models.
vi.setConfig({ testTimeout: 120_000 });

let tablet: Tablet;
beforeEach(async () => {
  serveFormulas();
  tablet = await Tablet.on(MORNING, 'Europe/Berlin');
});
afterEach(() => {
  tablet.leave();
  vi.unstubAllGlobals();
});

/** A bake that waits from now on, `from` its press. */
const begin = async (from: BakeStage, ...acts: readonly string[]): Promise<string> => {
  const { house } = tablet;
  const before = Object.keys(house.kitchen().bakes);
  const formula = formulaOf('lane-wheat');
  await tablet.did(house.begin({ formula, loaves: 1, kitchen: 22, from: from as never }));
  const who = Object.keys(house.kitchen().bakes).find((id) => !before.includes(id))!;
  for (const act of acts) await tablet.take({ kind: 'press', who, act } as never);
  tablet.pass(1_000);
  return who;
};
const timer = async (name: string, in_: number, call: 'act' | 'hot'): Promise<Instant> => {
  const until = tablet.owed.now + in_;
  await tablet.take({ kind: 'timer', timer: name, name: 'other', until, call });
  return until;
};
const stage = (who: string) => stageOf(tablet.house.kitchen().bakes[who]!);
const left = (who: string) => deadlineOf(tablet.house.kitchen().bakes[who]!)! - tablet.house.now();
const sounding = () => tablet.sound.heard().map(({ kind }) => kind);

describe('a clock set back by three hours while a fold is due', () => {
  it('rings on, keeps the hour of the fold by the new clock, and the next fold is as far as ever', async () => {
    const who = await begin('mix.temperature', 'unmeasured');
    tablet.pass(left(who) + 20_000);
    expect([stage(who), sounding()]).toEqual(['bulk.fold', ['act']]);
    const { since } = tablet.house.ringing()!;
    const now = tablet.house.now();
    tablet.set(-3 * HOUR, 400);
    tablet.pass(1_000);
    tablet.check();
    expect([stage(who), sounding()]).toEqual(['bulk.fold', ['act']]);
    expect(tablet.house.ringing()!.since).toBe(since);
    expect(tablet.house.now()).toBe(now + 1_400);
    expect(tablet.house.hour(since)).toBe('05:30');
    expect(tablet.house.leaps().back?.by).toBe(-3 * HOUR);
    await tablet.take({ kind: 'press', who, act: 'folded' });
    expect(tablet.sound.heard()).toEqual([]);
    const pressed = tablet.truth;
    tablet.pass(30 * MINUTE);
    expect(tablet.heard.at(-1)).toMatchObject({ truth: pressed + 30 * MINUTE, late: 0 });
    expect(tablet.heard).toHaveLength(2);
    expect(tablet.judge()).toEqual([]);
  });

  it('or in the seconds before it, the fold is called on its second', async () => {
    const who = await begin('mix.temperature', 'unmeasured');
    const due = tablet.truth + left(who);
    tablet.pass(left(who) - 200);
    // The page hears of it by its beat alone, after the fold is due.
    tablet.set(-3 * HOUR, 900);
    tablet.check();
    expect(tablet.heard).toHaveLength(1);
    expect(Math.abs(tablet.heard[0]!.truth - due)).toBeLessThan(1_000);
    expect(tablet.judge()).toEqual([]);
  });
});

describe('a clock set forward by two days, and back again', () => {
  it('calls at once, late by its deadline; said to have been set, every wait is as long as ever', async () => {
    const who = await begin('mix.first', 'mixed');
    const other = await begin('proof.retard');
    const due = tablet.truth + left(who);
    const [rest, cold] = [left(who), left(other)];
    tablet.pass(10 * MINUTE);
    tablet.set(2 * DAY, 300);
    tablet.check();
    expect([stage(who), stage(other)]).toEqual(['mix.salt', 'proof.look']);
    expect(tablet.heard).toHaveLength(1);
    const late = 2 * DAY - (rest - 10 * MINUTE);
    expect(tablet.heard[0]).toMatchObject({ kind: 'act', late });
    tablet.pass(MINUTE);
    expect(tablet.house.away()).toBeNull();
    tablet.set(-2 * DAY, 300);
    tablet.pass(MINUTE);
    expect(tablet.house.leaps()).toMatchObject({ back: { by: -2 * DAY }, ahead: { by: 2 * DAY } });
    await tablet.did(tablet.house.clockWasWrong());
    tablet.pass(1_000);
    tablet.check();
    expect([stage(who), stage(other)]).toEqual(['mix.rest', 'proof.retard']);
    expect(tablet.sound.heard()).toEqual([]);
    expect(left(other)).toBe(cold - (tablet.truth - due + rest));
    tablet.pass(due - tablet.truth);
    expect(tablet.heard.slice(1)).toMatchObject([{ truth: due, late: 0, kind: 'act' }]);
    expect(tablet.judge()).toEqual([]);
  });
});

describe('a sleep', () => {
  it('of 14 hours over four alarms: each once, the hottest first, each late by its own deadline', async () => {
    const who = await begin('mix.first', 'mixed');
    const other = await begin('bulk.proving');
    const dues = [
      await timer('kettle', 2 * HOUR, 'act'),
      await timer('nuts', 3 * HOUR, 'hot'),
      tablet.owed.now + left(who),
      tablet.owed.now + left(other),
    ];
    const slept = tablet.truth;
    const began = tablet.owed.now;
    tablet.sleep(14 * HOUR, { lag: 300 });
    tablet.check();
    const woke = slept + 14 * HOUR;
    const calls = tablet.house.kitchen().attention.context.calls;
    expect(calls.map(({ since }) => since).toSorted()).toEqual(dues.toSorted());
    // The page itself tells since when: the bench of the salt counts up from its deadline.
    const kitchen = tablet.house.kitchen();
    const view = benchView(
      kitchen,
      focusOn(kitchen, who)!,
      tablet.house.hour,
      null,
      tablet.house.ways(),
    );
    expect([view.stage, view.since]).toEqual(['mix.salt', dues[2]]);
    for (let n = 0; n < 4; n += 1) {
      expect(tablet.sound.heard()).toHaveLength(1);
      tablet.pass(2_000);
      tablet.check();
      await tablet.hush();
    }
    expect(tablet.sound.heard()).toEqual([]);
    expect(tablet.heard.map(({ id }) => id.replace(/:\d+$/, ''))).toEqual([
      'timer:nuts',
      `${who}:mix.salt`,
      'timer:kettle',
      `${other}:bulk.look`,
    ]);
    const [nuts] = tablet.heard;
    expect(nuts!.truth).toBe(woke);
    expect(nuts!.late).toBe(began + 14 * HOUR - dues[1]!);
    expect(tablet.judge()).toEqual([]);
  });

  it('that ends at an alarm’s very instant: once, and not late', async () => {
    const who = await begin('mix.first', 'mixed');
    const wait = left(who);
    tablet.sleep(wait, { lag: 500 });
    tablet.pass(MINUTE);
    tablet.check();
    expect(tablet.heard).toMatchObject([{ late: 0, kind: 'act', id: expect.stringMatching(who) }]);
    expect(tablet.judge()).toEqual([]);
  });

  it('that begins at an alarm’s very instant: it rang, and rings on', async () => {
    const who = await begin('mix.first', 'mixed');
    tablet.pass(left(who));
    expect(tablet.heard).toHaveLength(1);
    tablet.sleep(3 * HOUR);
    tablet.pass(MINUTE);
    tablet.check();
    expect(tablet.heard).toHaveLength(1);
    expect(tablet.sound.heard()).toHaveLength(1);
    expect(tablet.judge()).toEqual([]);
  });

  it.each([
    ['before both', 20 * MINUTE, 0],
    ['between them', 30 * MINUTE + 200, 1],
    ['after both', 30 * MINUTE + 700, 1],
  ])('of two bakes due in the same second, begun %s: each once', async (_, until, rung) => {
    const [one, two] = [await begin('mix.first'), await begin('mix.first')];
    await tablet.take({ kind: 'press', who: one, act: 'mixed' });
    const mixed = tablet.truth;
    tablet.pass(400);
    await tablet.take({ kind: 'press', who: two, act: 'mixed' });
    tablet.pass(until - 400);
    expect(tablet.heard).toHaveLength(rung);
    tablet.sleep(47 * MINUTE, { lag: 200 });
    tablet.check();
    expect([stage(one), stage(two)]).toEqual(['mix.salt', 'mix.salt']);
    const woke = mixed + until + 47 * MINUTE;
    await tablet.hush();
    expect(tablet.heard.map(({ id }) => id.split(':')[0])).toEqual([one, two]);
    const [first, second] = tablet.heard;
    expect(first!.truth).toBe(rung > 0 ? mixed + 30 * MINUTE : woke);
    // It waited for its turn behind the first; its deadline is what it is late by.
    expect(second!.late).toBe(tablet.truth - (mixed + 30 * MINUTE + 400));
    await tablet.hush();
    expect(tablet.sound.heard()).toEqual([]);
    expect(tablet.judge()).toEqual([]);
  });

  it('in the middle of a write, over an alarm: what was pressed is written, and the alarm calls', async () => {
    const [who, other] = [await begin('mix.first', 'mixed'), await begin('mix.first')];
    tablet.pass(left(who) - 100);
    const goOn = tablet.pauseWrites();
    const taken = tablet.take({ kind: 'press', who: other, act: 'mixed' });
    await new Promise((then) => setTimeout(then, 20));
    tablet.sleep(2 * HOUR);
    goOn();
    await taken;
    tablet.pass(1_000);
    expect([stage(who), stage(other)]).toEqual(['mix.salt', 'mix.salt']);
    const calls = tablet.house.kitchen().attention.context.calls;
    expect(calls.map(({ who: whose }) => whose)).toEqual([who, other]);
    expect(tablet.sound.heard()).toHaveLength(1);
    expect(tablet.heard.map(({ id }) => id.split(':')[0])).toEqual([who]);
  });
});
