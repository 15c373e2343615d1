import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StoreError, type SharedFile } from '../../machines/ports.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { FileRead, House, LogFile } from '../../src/screens/house.ts';
import { FilePage } from '../../src/screens/kitchen/FilePage.tsx';
import { SavePage } from '../../src/screens/kitchen/SavePage.tsx';
import { bakedYear } from '../machines/support/baked-year.ts';
import { fakeHouseLog } from '../fakes/house-log.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { down, tap, turnedClock, up } from './parts/touching.ts';

const NOTHING: LogFile = {
  ...{ records: [], others: [], equipment: null, pictures: [], circle: null },
  keepsakes: { said: new Map(), kept: [], gone: new Set() },
  ...{ comes: 'all', bakes: 2, fresh: 2, last: Date.UTC(2031, 4, 3) },
};
/** What was promised has come. */
const settle = () => new Promise<void>((then) => setTimeout(then, 0));
const clock = turnedClock();
let house: House;
let found: () => Promise<FileRead>;
let taken: LogFile[];
let refuses: Error | null;
let saved: (boolean | undefined)[];
let handed: SharedFile[];
let back: number;

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  [taken, saved, handed, refuses, back] = [[], [], [], null, 0];
  const real = await createRoot(() => openHouse(makeFakeWorld()));
  house = {
    ...real,
    readFile: () => found(),
    takeFile: (file) =>
      refuses ? Promise.reject(refuses) : Promise.resolve(void taken.push(file)),
    saveAsFile: (names) => void saved.push(names),
    handOn: (file) => Promise.resolve(handed.push(file) ? 'saved' : 'left'),
    log: () => Promise.resolve(fakeHouseLog()),
  };
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
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const detail = () => document.querySelector('.act-detail')!.textContent;

describe('the page of a saved file', () => {
  const choose = async (text = (): Promise<string> => Promise.resolve('')) => {
    const input = screen.getByLabelText<HTMLInputElement>('Choose the file');
    Object.defineProperty(input, 'files', { configurable: true, get: () => [{ text }] });
    fireEvent.change(input);
    await settle();
  };
  const hold = async (): Promise<void> => {
    const slab = screen.getByRole('button', { name: /^Hold to take it in/ });
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    clock.at += 1_100;
    down(slab);
    vi.advanceTimersByTime(1_300);
    up(slab);
    vi.useRealTimers();
    await settle();
  };
  const slab = () => screen.queryByRole('button', { name: /^Hold to take it in/ });
  const show = (): void => {
    render(() => (
      <PressGround now={clock}>
        <FilePage house={house} onBack={() => (back += 1)} />
      </PressGround>
    ));
  };
  const told = async (change: Partial<LogFile>): Promise<string> => {
    found = () => Promise.resolve({ file: { ...NOTHING, ...change }, why: null });
    await choose();
    return `${headline()}: ${detail()}`;
  };

  it('says what will happen before anything is written', async () => {
    show();
    const date = '3 May 2031';
    expect(await told({ last: null })).toBe(
      'All of it comes in: It holds no bake, only the kitchen.',
    );
    expect(await told({})).toBe(`All of it comes in: Bakes in it: 2. Last entry: ${date}.`);
    expect(await told({ comes: 'goesOn', fresh: 1 })).toBe(
      `It goes on from here: Bakes that come in: 1. Last entry: ${date}.`,
    );
    expect(await told({ comes: 'beside', fresh: 12 })).toBe(
      'A log of another tablet: Bakes that come beside yours: 12. Yours stay.',
    );
    expect(slab()).not.toBeNull();
    expect(await told({ comes: 'already' })).toBe(
      'It is all here already: No bake in it is new. The log does not change.',
    );
    expect(slab()).toBeNull();
    expect(taken).toEqual([]);
  });

  it('says of what is kept beside the log that what is not here comes in', async () => {
    show();
    const circle = { puts: [] };
    const keepsakes = { ...NOTHING.keepsakes, gone: new Set(['f-1/a']) };
    expect(await told({ circle })).toMatch(/From its circle, what is not here yet comes in\.$/);
    expect(await told({ keepsakes })).toMatch(
      /From its notes and photos, what is not here yet comes in\.$/,
    );
    expect(await told({ comes: 'already', circle, keepsakes })).toMatch(
      /From its circle, notes and photos, what is not here yet comes in\.$/,
    );
    expect(slab()).not.toBeNull();
  });

  it('takes it in by a hold alone, and says why it could not', async () => {
    show();
    await told({ comes: 'beside' });
    press(/^Hold to take it in/);
    await settle();
    expect(taken).toEqual([]);
    await hold();
    expect(taken).toEqual([{ ...NOTHING, comes: 'beside' }]);
    refuses = new StoreError('full');
    await hold();
    expect(screen.getByText(/^It could not be written\. Make room/)).toBeTruthy();
    expect(slab()).toBeNull();
    await told({});
    refuses = new StoreError('taken');
    await hold();
    expect(screen.getByText(/^Something was noted here meanwhile/)).toBeTruthy();
  });

  it('says where what is here, or the file, cannot be read', async () => {
    show();
    found = () => Promise.reject(new StoreError('closed'));
    await choose();
    expect(screen.getByText(/^What is here cannot be read just now/)).toBeTruthy();
    found = () => Promise.resolve({ file: null, why: 'The file is cut off.' });
    await choose();
    expect(screen.getByText('The file is cut off.')).toBeTruthy();
    expect(headline()).toBe('Read a saved file');
    await choose(() => Promise.reject(new DOMException('', 'NotReadableError')));
    expect(screen.getByText(/^What is here cannot be read just now/)).toBeTruthy();
  });
});

describe('the page of saving', () => {
  const show = (): void => {
    render(() => (
      <PressGround now={clock}>
        <SavePage house={house} onBack={() => (back += 1)} />
      </PressGround>
    ));
  };

  it('saves all of it, with names and voices only where that is ticked, and for that once', () => {
    for (const names of [false, true, false]) {
      show();
      const tick = screen.getByRole('button', { name: /^Names and voices/ });
      expect(tick.getAttribute('aria-pressed')).toBe('false');
      expect(screen.getByText(/notes and photos as they are\.$/)).toBeTruthy();
      if (names) {
        press(/^Names and voices/);
        expect(screen.getByText(/^Whoever has the file reads the names/)).toBeTruthy();
      }
      press(/^Save it/);
      cleanup();
    }
    expect(saved).toEqual([false, true, false]);
    expect(back).toBe(3);
  });

  it('hands on the readings of all bakes as a sheet, other tablets’ too', async () => {
    show();
    press(/^Readings as a sheet/);
    await screen.findByText('no reading yet');
    expect(handed).toEqual([]);
    cleanup();
    const year = bakedYear({ bakes: 2, seed: 3, leftOpen: false });
    const other = bakedYear({ bakes: 1, seed: 4, leftOpen: false }).map((row) => ({
      ...row,
      fact: { ...row.fact, id: `harbour-${row.fact.id}` },
    }));
    // A branch of the own log: what it has in common with it stands once.
    const others = [other, year.slice(0, -1)];
    house = {
      ...house,
      records: () => year,
      log: () => Promise.resolve(fakeHouseLog({ others })),
    };
    show();
    await settle();
    press(/^Readings as a sheet/);
    await screen.findByText('saved');
    expect(handed).toMatchObject([{ name: 'readings.csv', type: 'text/csv' }]);
    const lines = String(handed[0]!.text).trimEnd().split('\r\n');
    const readings = (rows: typeof year) =>
      rows.filter(({ fact }) => fact.kind === 'reading').length;
    const withdrawn = [...year, ...other].filter(
      ({ fact }) =>
        fact.kind === 'takeBack' &&
        [...year, ...other].some(
          (row) => row.fact.id === fact.target && row.fact.kind === 'reading',
        ),
    ).length;
    expect(lines).toHaveLength(1 + readings(year) + readings(other) - withdrawn);
    expect(lines[0]).toContain('Bread,');
  });
});
