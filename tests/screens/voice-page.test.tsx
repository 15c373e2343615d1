import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import Kitchen from '../../src/screens/kitchen/Kitchen.tsx';
import { serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../fakes/heard-speaker.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let house: House;
let speaker: HeardSpeaker;
let world: FakeWorld;
const clock = turnedClock();

beforeEach(async () => {
  serveFormulas();
  speaker = makeHeardSpeaker();
  world = makeFakeWorld();
  house = await createRoot(() => openHouse({ ...world, speaker }));
  await vi.waitFor(() => expect(house.formulas().length).toBeGreaterThan(0));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const open = (): void => {
  render(() => (
    <PressGround now={clock}>
      <Kitchen house={house} fromBench={false} onHome={() => undefined} />
    </PressGround>
  ));
  press(/^This tablet/);
  press(/^Sound check/);
  press(/^The voice/);
};
const own = () => screen.getByRole('button', { name: /^Read my own words aloud/ });

describe('the page of the voice', () => {
  it('is off before anyone has said so, and read at once when it is turned on', async () => {
    open();
    expect([own().getAttribute('aria-pressed'), house.equipment().readsOwn]).toEqual([
      'false',
      false,
    ]);
    await screen.findByText(/^No clip says a name you gave/);
    expect(screen.queryByText(/does nothing/)).toBeNull();
    press(/^Read my own/);
    expect([own().getAttribute('aria-pressed'), house.equipment().readsOwn]).toEqual([
      'true',
      true,
    ]);
    await vi.waitFor(() => expect(speaker.said).toHaveLength(1));
    const [{ words, own: said }] = speaker.said as [(typeof speaker.said)[number]];
    expect(said!.aloud).toBe(true);
    expect(said!.phrases).toContain(words);
    press(/^Read my own/);
    expect([house.equipment().readsOwn, speaker.said.length]).toEqual([false, 1]);
    house.say('Fold the dough.');
    await vi.waitFor(() => expect(speaker.said.at(-1)!.own!.aloud).toBe(false));
  });

  it('speaks slower where that is wanted, says so at once, and keeps it', async () => {
    open();
    const slower = () => screen.getByRole('button', { name: /^Speak slower/ });
    expect(slower().textContent).toBe('Speak slowerOff');
    press(/^Speak slower/);
    expect([slower().getAttribute('aria-pressed'), slower().textContent]).toEqual([
      'true',
      'Speak slowerOn',
    ]);
    await vi.waitFor(() => expect(speaker.said).toHaveLength(1));
    expect(speaker.said[0]).toMatchObject({ pace: 'small' });
    expect(speaker.said[0]!.words).toMatch(/^Spread the dough thin/);
    house.say('Fold the dough.');
    await vi.waitFor(() => expect(speaker.said.at(-1)!.words).toBe('Fold the dough.'));
    expect(speaker.said.at(-1)!.pace).toBe('small');
    const again = await createRoot(() => openHouse({ ...world, speaker }));
    expect(again.equipment().pace).toBe('small');
    press(/^Speak slower/);
    await vi.waitFor(() => expect(speaker.said.at(-1)!.words).toMatch(/^Spread/));
    expect(speaker.said.at(-1)!.pace).toBe('grown');
  });

  it('tells where the tablet has no voice of its own', async () => {
    speaker.canRead = false;
    open();
    expect(screen.getByText(/^Looking for/)).toBeTruthy();
    await screen.findByText(/has no voice of its own. Turned on, this does nothing/);
    press(/^That’s it/);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Sound check');
  });

  it('gives way to the answers once the calls are played', () => {
    open();
    press(/^That’s it/);
    press(/^Play the calls/);
    expect(screen.queryByRole('button', { name: /^The voice/ })).toBeNull();
  });
});
