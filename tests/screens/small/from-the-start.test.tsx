import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { WaysSheet } from '../../../src/screens/start/WaysSheet.tsx';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
beforeEach(serveFormulas);
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SLOW = { timeout: 10_000 };
const press = async (name: RegExp): Promise<void> => {
  const found = await screen.findAllByRole('button', { name }, SLOW);
  clock.at += 1_100;
  tap(found.at(-1)!);
};

it('small hands are seen under More of the start page, turned to an age, to another, and off', async () => {
  const { house } = await openBaking(makeFakeWorld());
  render(() => (
    <PressGround now={clock}>
      <WaysSheet house={house} onClose={() => undefined}>
        {null}
      </WaysSheet>
    </PressGround>
  ));
  const stands = (value: string) =>
    screen.findByRole('button', { name: new RegExp(`^Small hands ?${value}$`) }, SLOW);
  await stands('Off');
  await press(/^Small hands/);
  const chosen = async (): Promise<readonly (string | null)[]> => {
    await screen.findByRole('group', { name: 'Small hands' }, SLOW);
    return [...document.querySelectorAll('.small-ages [aria-pressed="true"]')].map(
      ({ textContent }) => textContent,
    );
  };
  expect(await chosen()).toEqual([]);
  expect(screen.queryByRole('button', { name: 'Baker’s view' })).toBeNull();
  await press(/^7 to 9 years/);
  expect(house.ways().small).toBe('7-9');
  await stands('7 to 9 years');
  await press(/^Small hands/);
  expect(await chosen()).toEqual(['7 to 9 years']);
  await press(/^10 to 12 years/);
  await stands('10 to 12 years');
  await press(/^Small hands/);
  await press(/^Close/);
  expect(house.ways().small).toBe('10-12');
  await press(/^Small hands/);
  await press(/^Baker’s view/);
  await stands('Off');
  expect(house.ways().small).toBe('off');
}, 30_000);
