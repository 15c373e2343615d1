import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import OverAll from '../../src/app/OverAll.tsx';
import { bench } from '../../src/core/speech/en/bench.ts';
import { leapt } from '../../src/core/speech/en/leapt.ts';
import { HOUR } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House, Leaps } from '../../src/screens/house.ts';
import { tap, turnedClock } from './parts/touching.ts';

afterEach(cleanup);

const clock = turnedClock();
const over = (from: Leaps) => {
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
    told: () => [],
    now: () => 0,
    kitchen: () => ({ timers: {}, bakes: {}, starter: { signs: [], marks: {} } }),
  } as unknown as House;
  render(() => (
    <PressGround now={clock}>
      <OverAll house={house} />
    </PressGround>
  ));
  return { clockWasWrong, leapRead };
};
const press = async (name: string): Promise<void> => {
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
