import { render, screen } from '@solidjs/testing-library';
import { vi } from 'vitest';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { DayDraft } from '../../../src/screens/day-draft.ts';
import Day from '../../../src/screens/day/Day.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { THURSDAY } from './saturday.ts';

export interface OnDay {
  readonly house: House;
  readonly world: FakeWorld;
  /** Bakes gone to, and how often the start was. */
  readonly bakes: string[];
  readonly home: () => number;
  /** How many presses were made. */
  readonly presses: () => number;
  press(name: RegExp | string): Promise<void>;
  headline(): string | null;
  /** From an empty page to what became of it: a bread for Saturday noon at 22 °C. */
  ask(day?: RegExp, hour?: RegExp): Promise<void>;
}

/** A tablet on a Thursday evening, on its page of the Day. Wants `unstubAllGlobals` and `cleanup`. */
export async function onDay(
  parts: { world?: FakeWorld; equip?: Parameters<House['equip']>[0]; asks?: DayDraft } = {},
): Promise<OnDay> {
  serveFormulas();
  const clock = turnedClock();
  // The zone in which this process tells its hours.
  const zone = new Intl.DateTimeFormat().resolvedOptions().timeZone;
  const world = { ...(parts.world ?? makeFakeWorld({ at: THURSDAY })), zone: () => zone };
  const { house } = await openBaking(world);
  if (parts.equip) house.equip(parts.equip);
  const bakes: string[] = [];
  let home = 0;
  let presses = 0;
  render(() => (
    <PressGround now={clock}>
      <Day
        house={house}
        asks={parts.asks}
        onBake={(id) => bakes.push(id)}
        onHome={() => void (home += 1)}
      />
    </PressGround>
  ));
  const at: OnDay = {
    house,
    world,
    bakes,
    home: () => home,
    presses: () => presses,
    async press(name) {
      clock.at += 1_100;
      presses += 1;
      tap(await screen.findByRole('button', { name }, { timeout: 10_000 }));
    },
    headline: () => screen.getByRole('heading', { level: 1 }).textContent,
    async ask(day = /^Sat/, hour = /^12:00/) {
      await at.press(/^Ready when/);
      await at.press(day);
      await at.press(hour);
      await at.press(/^How warm/);
      await at.press(/^22/);
      await at.press(/^Make a plan/);
    },
  };
  await vi.waitFor(() => screen.getByRole('heading', { level: 1 }));
  return at;
}
