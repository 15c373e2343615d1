import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { leapt } from '../../../src/core/speech/words/leapt.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Bench from '../../../src/screens/bench/Bench.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

vi.setConfig({ testTimeout: 30_000 });

const clock = turnedClock();
let world: FakeWorld;
let house: House;
let bake: string;

beforeEach(async () => {
  serveFormulas();
  world = makeFakeWorld();
  const opened = await openBaking(world);
  house = opened.house;
  bake = await opened.begin('bulk.proving');
  render(() => (
    <PressGround now={clock}>
      <Bench
        house={house}
        bake={bake}
        onHome={() => undefined}
        onBake={() => undefined}
        onKitchen={() => undefined}
        onDay={() => undefined}
      />
    </PressGround>
  ));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = async (name: string): Promise<void> => {
  const button = (await screen.findAllByRole('button', { name }, { timeout: 10_000 })).at(-1)!;
  clock.at += 1_100;
  tap(button);
};
/** The page is hidden, and the wall two hours on when it is shown; the steady clock stood. */
const backTwoHoursLater = (): void => {
  world.clock.turn(10 * MINUTE);
  world.beat();
  world.glance();
  world.clock.sleep(2 * HOUR);
  world.beat();
  world.clock.turn(1000);
  world.beat();
};
const left = () => deadlineOf(house.kitchen().bakes[bake]!)! - house.now();

it('of what may have been a sleep the baker can say under More that the clock was set', async () => {
  const before = left();
  backTwoHoursLater();
  expect(left()).toBe(before - 2 * HOUR - 10 * MINUTE - 1000);
  await press('More');
  await press(leapt.askMore);
  await press(leapt.set);
  await vi.waitFor(() => expect(house.records().at(-1)!.fact.kind).toBe('jump'));
  expect(left()).toBe(before - 10 * MINUTE - 1000);
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
});

it('is offered no more once something was done since', async () => {
  backTwoHoursLater();
  const reading = { what: 'doughTemperature', celsius: 24 } as const;
  await house.take({ kind: 'reading', by: 'hand', bake, reading });
  await press('More');
  await screen.findByRole('dialog', {}, { timeout: 10_000 });
  expect(screen.queryByRole('button', { name: leapt.askMore })).toBeNull();
});
