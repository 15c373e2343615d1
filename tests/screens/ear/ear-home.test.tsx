import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import EarPages from '../../../src/screens/kitchen/ear/EarPages.tsx';
import Kitchen from '../../../src/screens/kitchen/Kitchen.tsx';
import { aPerson } from '../../fakes/said-phrases.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import {
  button,
  earTests,
  headline,
  holdToErase,
  isOff,
  maybeButton,
  openEar,
  press,
  settle,
} from './ear-pages.tsx';

earTests();

const boat = aPerson(['done', 'yes'], { mark: 'boat' });
const sun = aPerson(['done'], { mark: 'sun', child: true });
const tile = (name: RegExp): HTMLElement => button(name);

describe('the page of the ear', () => {
  it('is reached from the tablet’s page, which tells whether it listens', async () => {
    const clock = turnedClock();
    const house = await createRoot(() => openHouse(makeFakeWorld()));
    render(() => (
      <PressGround now={clock}>
        <Kitchen house={house} fromBench={false} onHome={() => undefined} />
      </PressGround>
    ));
    const go = (name: RegExp): void => {
      clock.at += 1_100;
      tap(button(name));
    };
    go(/^This tablet/);
    expect(button(/^The ear/).textContent).toBe('The earOff');
    go(/^The ear/);
    await screen.findByText(/^It lets a voice press/, undefined, { timeout: 10_000 });
    go(/^That’s it/);
    expect(headline()).toBe('This tablet');
    house.equip({ ear: 'learned' });
    expect(button(/^The ear/).textContent).toBe('The earLearned');
  });

  it('says that no gate opens by voice, and that it knows nobody until somebody has spoken', async () => {
    const { house, left } = await openEar([], 'off');
    expect(screen.getByText(/opens no gate: hot, blade and machine/)).toBeTruthy();
    expect(screen.getByText('It lets a voice press for floury hands.')).toBeTruthy();
    house.equip({ ear: 'plain' });
    expect(screen.getByText('It is on, and knows no voice yet.')).toBeTruthy();
    expect(button(/^Whose voices/).textContent).toBe('Whose voicesnobody yet');
    await (await house.ear()).keep(boat);
    expect(screen.getByText('What may be said stands beside each step.')).toBeTruthy();
    expect(button(/^Whose voices/).textContent).toBe('Whose voices1 known');
    await press(/^That’s it/);
    expect(left()).toBe(1);
  });

  it('says what it can do and what becomes of a voice', async () => {
    await openEar();
    await press(/^What to expect/);
    for (const line of [
      /^It knows only who has spoken here/,
      /^A loud kitchen makes it deaf/,
      /^No sound is kept, and nothing leaves this tablet/,
      /^No saved file has these voices/,
      /^This page is for grown.ups/,
    ])
      expect(screen.getByText(line)).toBeTruthy();
    await press(/^That’s it/);
    expect(headline()).toBe('The ear');
  });

  it('says that it cannot be opened where its rows cannot be read', async () => {
    const world = makeFakeWorld();
    const house = await createRoot(() =>
      openHouse({ ...world, voices: () => Promise.reject(new Error('closed')) }),
    );
    render(() => (
      <PressGround now={turnedClock()}>
        <EarPages house={house} onBack={() => undefined} />
      </PressGround>
    ));
    await screen.findByRole('heading', { name: 'It cannot be opened' }, { timeout: 10_000 });
    expect(screen.getByText(/Nothing was changed/)).toBeTruthy();
  });
});

describe('what understands a voice', () => {
  it('tells what it weighs before it is chosen, and is there once it has come', async () => {
    const { house, ear } = await openEar([], 'off');
    let came: (here: boolean) => void = () => undefined;
    const fetch = vi
      .spyOn(ear, 'fetch')
      .mockImplementation(() => new Promise<boolean>((resolve) => (came = resolve)));
    await press(/^Does it listen/);
    expect(tile(/^Learned/).textContent).toMatch(/6.MB come first, once/);
    expect([fetch.mock.calls.length, tile(/^Off/).getAttribute('aria-pressed')]).toEqual([
      0,
      'true',
    ]);
    await press(/^Learned/);
    expect(fetch.mock.calls).toEqual([['learned']]);
    expect(screen.getByText(/^Fetching 5.6.MB/)).toBeTruthy();
    expect([house.equipment().ear, isOff(/^Plain/)]).toEqual(['off', true]);
    came(true);
    await settle();
    expect(house.equipment().ear).toBe('learned');
    expect(screen.queryByText(/^Fetching/)).toBeNull();
    expect(tile(/^Learned/).getAttribute('aria-pressed')).toBe('true');
  });

  it('stays as it was where it does not come, says so, and may be asked again', async () => {
    const { house, ear } = await openEar([], 'plain');
    ear.here = false;
    await press(/^Does it listen/, /^Learned/);
    expect(screen.getByText(/^It did not come/)).toBeTruthy();
    expect(house.equipment().ear).toBe('plain');
    vi.spyOn(ear, 'fetch').mockRejectedValueOnce(new Error('gone'));
    await press(/^Learned/);
    expect(screen.getByText(/^It did not come/)).toBeTruthy();
    ear.here = true;
    await press(/^Learned/);
    expect(screen.queryByText(/^It did not come/)).toBeNull();
    expect(house.equipment().ear).toBe('learned');
  });

  it('is turned on and off by single presses, nothing fetched to turn it off', async () => {
    const { house, ear } = await openEar([], 'off');
    const fetch = vi.spyOn(ear, 'fetch');
    await press(/^Does it listen/, /^Plain/);
    expect([house.equipment().ear, fetch.mock.calls]).toEqual(['plain', [['plain']]]);
    await press(/^Off/);
    expect([house.equipment().ear, fetch.mock.calls.length, ear.opened]).toEqual(['off', 1, 0]);
  });

  it('is not turned on by what comes after the page was left', async () => {
    const { house, ear } = await openEar([], 'off');
    let came: (here: boolean) => void = () => undefined;
    vi.spyOn(ear, 'fetch').mockReturnValue(new Promise<boolean>((resolve) => (came = resolve)));
    await press(/^Does it listen/, /^Learned/, /^That’s it/);
    came(true);
    await settle();
    expect(house.equipment().ear).toBe('off');
  });
});

describe('forgetting', () => {
  it('forgets one voice by a hold and leaves the others', async () => {
    const { voices } = await openEar([boat, sun]);
    await press(/^Whose voices/, /^Boat/, /^Forget this voice/);
    expect(headline()).toBe('Forget this voice for good?');
    await holdToErase();
    expect([...voices.rows.keys()]).toEqual(['en/sun']);
    expect(headline()).toBe('Whose voices');
    expect([maybeButton(/^Boat/), button(/^Sun/).textContent]).toEqual([null, 'Sun1 of 15']);
  });

  it('forgets every voice by two taps, leaves no row, and the ear is off', async () => {
    const { voices, house } = await openEar([boat, sun]);
    await press(/^Forget every voice/);
    expect(screen.getByText(/^In every tongue/)).toBeTruthy();
    expect(voices.rows.size).toBe(2);
    await press(/^Tap here first/, /^Then tap here/);
    expect([voices.rows.size, house.equipment().ear, headline()]).toEqual([0, 'off', 'The ear']);
    expect(button(/^Whose voices/).textContent).toContain('nobody yet');
  });

  it('keeps them where that is pressed, and says where it could not be done', async () => {
    const { voices, house } = await openEar([boat]);
    await press(/^Forget every voice/, /^Keep it/);
    expect([headline(), voices.rows.size]).toEqual(['The ear', 1]);
    voices.full = true;
    await press(/^Forget every voice/);
    await holdToErase();
    expect(screen.getByText(/^The tablet is full/)).toBeTruthy();
    expect([voices.rows.size, house.equipment().ear]).toEqual([1, 'plain']);
    cleanup();
  });
});
