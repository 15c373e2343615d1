import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import TonguePage from '../../src/screens/TonguePage.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

const clock = turnedClock();
beforeEach(serveFormulas);
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = (name: string): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};

it('chooses a tongue by its own name, and none while something is not on the disk yet', async () => {
  const { house } = await openBaking(makeFakeWorld());
  const [unsaved, setUnsaved] = createSignal(2);
  const choose = vi.fn<House['choose']>();
  render(() => (
    <PressGround now={clock}>
      <TonguePage house={{ ...house, unsaved, choose }} onClose={() => undefined} />
    </PressGround>
  ));
  press('Deutsch');
  expect(choose).not.toHaveBeenCalled();
  setUnsaved(0);
  press('Deutsch');
  expect(choose).toHaveBeenCalledExactlyOnceWith({ tongue: 'de' });
  expect(screen.getByRole('button', { name: 'English' }).getAttribute('aria-pressed')).toBe('true');
});
