// @vitest-environment jsdom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { emptyKitchen, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import type { Sound } from '../../machines/ports.ts';
import { makeClock } from '../../src/adapters/clock.ts';
import { judgeBy } from '../../src/app/judge.ts';
import { makeKeeper } from '../../src/app/keeper.ts';
import { makeKitchenTime } from '../../src/app/kitchen-time.ts';
import { makeRunner } from '../../src/app/runner.ts';
import type { Deed } from '../../src/core/records/fact.ts';
import { DAY, HOUR, MINUTE } from '../../src/core/units.ts';
import { makeCountedIds } from '../fakes/counted-ids.ts';
import { COURSE_HERE } from '../fakes/course-here.ts';
import { makeMemoryStore } from '../fakes/memory-store.ts';
import { makeTimedSound, type TimedSound } from '../fakes/timed-sound.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { plainStarter, plainWait } from '../machines/support/waits.ts';

const START = Date.UTC(2031, 4, 3, 6);
/** A browser's timer holds no more milliseconds; one that is longer fires at once. */
const LONGEST_TIMEOUT = 2 ** 31 - 1;

beforeEach(() => {
  vi.useFakeTimers({
    toFake: ['setTimeout', 'clearTimeout', 'Date', 'performance'],
    now: START,
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

/** The real clock, keeper and runner, in a fridge where loaves are looked at after so long. */
const kitchen = (cold: number) => {
  const clock = makeClock();
  const time = makeKitchenTime(clock, null);
  const sound: TimedSound & Sound = makeTimedSound(clock);
  const opened = { kitchen: emptyKitchen(MACHINES), records: [] };
  const keeper = makeKeeper({
    ...{ opened, reopen: () => Promise.resolve(opened), store: makeMemoryStore() },
    ...{ machines: MACHINES, course: COURSE_HERE, time, ids: makeCountedIds() },
    judge: () =>
      Promise.resolve(
        judgeBy((input) => {
          const said = plainWait(input);
          const look = input.now + cold;
          return input.stage === 'proof.retard'
            ? { ...said, marks: { ...said.marks, look } }
            : said;
        }, plainStarter),
      ),
    onChange: () => runner.follow(keeper.kept().kitchen),
    onSay: () => undefined,
    later: () => () => undefined,
  });
  const runner = makeRunner({
    ...{ clock, sound, machines: MACHINES, course: COURSE_HERE },
    wallOf: (at) => time.wallOf(at),
    tick: () => keeper.tick(),
    quiet: () => null,
  });
  return { keeper, runner, sound };
};
const retarding: Deed = {
  kind: 'start',
  bake: 'a',
  loaves: ['a1'],
  from: 'proof.retard',
  recipe: RECIPE,
  kitchen: 22,
};

it('a wait of thirty days calls after thirty days, though no timer of a browser is as long', async () => {
  const asked = vi.spyOn(globalThis, 'setTimeout');
  const { keeper, runner, sound } = kitchen(30 * DAY);
  expect(await keeper.take(retarding)).toBe('taken');
  const at = () => stageOf(keeper.kept().kitchen.bakes['a']!);
  expect(deadlineOf(keeper.kept().kitchen.bakes['a']!)).toBe(START + 30 * DAY);
  const heard = () => sound.heard().length;
  // A browser fires a timer of more than 31 bits at once, or cut to as many.
  vi.advanceTimersByTime(MINUTE);
  for (const passed of [(30 * DAY) % 2 ** 31, 2 ** 31, 30 * DAY - 401]) {
    vi.setSystemTime(START + passed);
    vi.advanceTimersByTime(400);
    expect([passed, at(), heard()]).toEqual([passed, 'proof.retard', 0]);
  }
  vi.advanceTimersByTime(400);
  expect([at(), heard()]).toEqual(['proof.look', 1]);
  expect(sound.heard()[0]!.late).toBeLessThan(1_000);
  expect(keeper.kept().kitchen.attention.context.calls[0]!.since).toBe(START + 30 * DAY);
  expect(Math.max(...asked.mock.calls.map(([, ms]) => ms ?? 0))).toBeLessThan(LONGEST_TIMEOUT);
  runner.stop();
});

it.each([
  [24 * HOUR, 'taken'],
  [30 * DAY, 'refused'],
] as const)('a timer of the baker’s own of %i ms is %s, and told so', async (long, outcome) => {
  const { keeper, runner, sound } = kitchen(DAY);
  const timer = {
    kind: 'timer',
    timer: 't1',
    name: 'other',
    until: START + long,
    call: 'act',
  } as const;
  expect(await keeper.take(timer)).toBe(outcome);
  const rows = outcome === 'taken' ? 1 : 0;
  expect([keeper.kept().records.length, sound.rings.length]).toEqual([rows, rows]);
  runner.stop();
});
