import { cleanup, render, screen, within } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { carePage } from '../../src/core/speech/words/care-page.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import { CareControl } from '../../src/screens/CareControl.tsx';
import type { House } from '../../src/screens/house.ts';
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

it('has every caution with who says so, and reads each part of it aloud', async () => {
  const { house } = await openBaking(makeFakeWorld());
  const say = vi.fn<House['say']>();
  render(() => (
    <PressGround now={clock}>
      <CareControl house={{ ...house, say }} />
    </PressGround>
  ));
  press('Take care');
  const sheet = within(screen.getByRole('dialog'));
  for (const { title, by, lines } of carePage.parts) {
    sheet.getByRole('heading', { name: title });
    sheet.getByText(`Source: ${by}`);
    press(`Read aloud: ${title}`);
    const words = say.mock.lastCall![0];
    expect(words).not.toMatch(/[{}]/);
    // Units are said in words: what stands before them is what is compared.
    for (const line of lines) expect(words).toContain(line.split('{')[0]!.trim());
  }
  expect(say).toHaveBeenCalledTimes(carePage.parts.length);
});
