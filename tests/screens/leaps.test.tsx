import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import OverAll from '../../src/app/OverAll.tsx';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { bench } from '../../src/core/speech/words/bench.ts';
import { leapt } from '../../src/core/speech/words/leapt.ts';
import { HOUR } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House, Leaps } from '../../src/screens/house.ts';
import { OtherBakes } from '../../src/screens/OtherBakes.tsx';
import { tap, turnedClock } from './parts/touching.ts';

afterEach(cleanup);

const clock = turnedClock();
const houseWith = (from: Leaps, bakes: object) => {
  const [leaps, set] = createSignal(from);
  const clockWasWrong = vi.fn(async () => void set({ back: null, ahead: null }));
  const leapRead = vi.fn((which: keyof Leaps) => set((old) => ({ ...old, [which]: null })));
  const house = {
    leaps,
    leapRead,
    clockWasWrong,
    holds: true,
    rehearsal: null,
    saving: () => 'saved',
    ringing: () => null,
    told: () => [],
    records: () => [],
    now: () => 0,
    equipment: () => EQUIPMENT,
    kitchen: () => ({ timers: {}, bakes, starter: { signs: [], marks: {} } }),
  } as unknown as House;
  return { house, clockWasWrong, leapRead };
};
const over = (from: Leaps, bakes: object = {}) => {
  const { house, ...calls } = houseWith(from, bakes);
  render(() => (
    <PressGround now={clock}>
      <OverAll house={house} />
    </PressGround>
  ));
  return calls;
};
/** What stands beside the bake on show, with so many others. */
const beside = (from: Leaps, others = 0, onBench = true) => {
  const { house, ...calls } = houseWith(from, { a: {} });
  const other = { mark: 1, name: 'x', waits: 'x', stage: 'x', at: null, late: false };
  render(() => (
    <PressGround now={clock}>
      <OtherBakes
        house={house}
        others={Array.from({ length: others }, (_, i) => ({ ...other, id: `b${i}` }))}
        onBake={() => undefined}
        onTimers={onBench ? () => undefined : undefined}
      />
    </PressGround>
  ));
  return calls;
};
const AHEAD = /^Clock went ahead/;
const BACK = /^Clock went back/;
const press = async (name: string | RegExp): Promise<void> => {
  const button = await screen.findByRole('button', { name }, { timeout: 10_000 });
  clock.at += 1_100;
  tap(button);
};
const at = { from: 0, by: 3 * HOUR };

it('tells that the clock went back, until it is closed', async () => {
  const { leapRead } = over({ back: { from: 0, by: -3 * HOUR }, ahead: null });
  await screen.findByText(/clock went back 3 h\./, {}, { timeout: 4_000 });
  await press(bench.close);
  expect(leapRead).toHaveBeenCalledWith('back');
  expect(screen.queryByRole('alert')).toBeNull();
});

it.each([
  [leapt.set, 'clockWasWrong'],
  [leapt.slept, 'leapRead'],
] as const)(
  'asks about a clock that went ahead in sight: “%s” in two presses',
  async (say, does) => {
    const house = over({ back: null, ahead: { ...at, inSight: true } });
    await press(leapt.which);
    await press(say);
    expect(house[does]).toHaveBeenCalledOnce();
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(screen.queryByRole('alert')).toBeNull();
  },
);

it('is silent about what may well have been a sleep', () => {
  over({ back: null, ahead: { ...at, inSight: false } });
  expect(screen.queryByRole('alert')).toBeNull();
});

describe('beside a running bake', () => {
  it.each([
    { back: null, ahead: { ...at, inSight: true } },
    { back: { from: 0, by: -3 * HOUR }, ahead: null },
  ])('lies over nothing: %o', (leaps) => {
    over(leaps, { a: {} });
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it.each([
    [leapt.set, 'clockWasWrong'],
    [leapt.slept, 'leapRead'],
  ] as const)('is a press that asks: “%s” in two', async (say, does) => {
    const house = beside({ back: null, ahead: { ...at, inSight: true } });
    expect(screen.getByRole('alert').textContent).toMatch(/3\sh ahead/);
    await press(AHEAD);
    await press(say);
    expect(house[does]).toHaveBeenCalledOnce();
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(screen.queryByRole('button', { name: AHEAD })).toBeNull();
  });

  it('is told after what is asked, and closed on its page', async () => {
    const { leapRead } = beside({
      back: { from: 0, by: -2 * HOUR },
      ahead: { ...at, inSight: true },
    });
    expect(screen.queryByRole('button', { name: BACK })).toBeNull();
    await press(AHEAD);
    await press(leapt.slept);
    await press(BACK);
    await press(bench.close);
    expect(leapRead.mock.calls).toEqual([['ahead'], ['back']]);
    expect(screen.queryByRole('button', { name: BACK })).toBeNull();
  });

  it('has a place before all others on a bench, on the start page where one is free', () => {
    const leaps = { back: null, ahead: { ...at, inSight: true } };
    beside(leaps, 2);
    expect(screen.getAllByRole('button')).toHaveLength(2);
    screen.getByRole('button', { name: AHEAD });
    cleanup();
    beside(leaps, 2, false);
    expect(screen.queryByRole('button', { name: AHEAD })).toBeNull();
  });

  it('is silent about what may well have been a sleep', () => {
    beside({ back: null, ahead: { ...at, inSight: false } });
    expect(screen.queryAllByRole('button')).toEqual([]);
  });
});
