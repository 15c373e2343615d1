import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeLink } from '../../../src/adapters/sheets/link.ts';
import { writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Book from '../../../src/screens/book/Book.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { jpeg, makeMemoryPictures } from '../../fakes/memory-pictures.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();

beforeEach(() => {
  serveFormulas();
  let n = 0;
  // jsdom has no addresses of files.
  URL.createObjectURL = () => `blob:loafward/${(n += 1)}`;
  URL.revokeObjectURL = () => undefined;
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const until = (holds: () => void) => vi.waitFor(holds, { timeout: 20_000 });
const open = async (world: FakeWorld): Promise<House> => {
  const { house } = await openBaking(world);
  render(() => (
    <PressGround now={clock}>
      <Book house={house} onHome={() => undefined} />
    </PressGround>
  ));
  await house.pictures().catch(() => undefined);
  return house;
};
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const toPicture = (): void => {
  press(/^Lane wheat\s*76/);
  press(/^More$/);
  press(/^Its picture/);
};
/** A file is chosen. jsdom lets nobody but its owner say which, and its files have no bytes to read. */
const choose = (label: string, bytes: readonly number[]): void => {
  const input = screen.getByLabelText<HTMLInputElement>(label, { selector: 'input' });
  const file = new File([jpeg(...bytes)], 'IMG_0001.jpg', { type: 'image/jpeg' });
  file.arrayBuffer = () => Promise.resolve(jpeg(...bytes).buffer);
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  fireEvent.change(input);
};
const large = () => screen.queryByAltText('The picture of Lane wheat');

describe('a formula’s picture', { timeout: 30_000 }, () => {
  it('is chosen or taken, stands on its page and in the list, and is there after a reload', async () => {
    const pictures = makeMemoryPictures();
    await open(makeFakeWorld({ pictures }));
    expect(document.querySelector('img')).toBeNull();
    toPicture();
    expect(headline()).toMatch(/^No\spicture\syet$/);
    const inputs = [...document.querySelectorAll('input')];
    expect(inputs.map((one) => [one.accept, one.getAttribute('capture')])).toEqual([
      ['image/*', 'environment'],
      ['image/*', null],
    ]);
    expect(screen.queryByRole('button', { name: /^Take/ })).toBeNull();
    choose('Choose one', [1]);
    await until(() => expect(large()).not.toBeNull());
    expect(pictures.rows.get('lane-wheat')).toEqual({ now: jpeg(1), before: null });
    press(/^That’s it/);
    expect(large()!.className).toBe('picture-shown');
    press(/^That’s it/);
    const listed = screen.getByRole('button', { name: /^Lane wheat\s*76/ });
    expect(listed.querySelector('img')!.getAttribute('src')).toMatch(/^blob:/);
    expect(document.querySelectorAll('.book-entry img')).toHaveLength(1);
    cleanup();
    await open(makeFakeWorld({ pictures }));
    await until(() => expect(document.querySelectorAll('.book-entry img')).toHaveLength(1));
  });

  it('is replaced and taken away, and either is taken back', async () => {
    const pictures = makeMemoryPictures();
    pictures.rows.set('lane-wheat', { now: jpeg(1) });
    const house = await open(makeFakeWorld({ pictures }));
    await until(() => expect(document.querySelector('.book-entry img')).not.toBeNull());
    toPicture();
    const now = () => pictures.rows.get('lane-wheat')?.now;
    expect(screen.queryByRole('button', { name: /^Take\sthat\sback/ })).toBeNull();
    choose('Use the camera', [2]);
    await until(() => expect(now()).toEqual(jpeg(2)));
    await until(() => expect(headline()).toMatch(/^Its\spicture$/));
    press(/^Take\sthat\sback/);
    await until(() => expect(now()).toEqual(jpeg(1)));
    press(/^Take\sit\saway/);
    await until(() => expect(large()).toBeNull());
    expect(now()).toBeNull();
    press(/^Take\sthat\sback/);
    await until(() => expect(large()).not.toBeNull());
    expect(now()).toEqual(jpeg(1));
    // It is in no fact, and in nothing that is shared.
    expect(house.records()).toEqual([]);
    const { latest } = house.book().find(({ id }) => id === 'lane-wheat')!;
    expect(writeFormulas([latest])).not.toMatch(/picture|jpeg|blob|9j/i);
    expect(writeLink(latest)).not.toBeNull();
    expect(JSON.stringify(latest)).not.toMatch(/picture|jpeg|blob/i);
  });

  it.each([
    ['none', 'That file is not a picture. Nothing was changed: choose another.'],
    [
      'large',
      'That picture is too large: at most 20 megabytes and 60 million pixels. Nothing was changed.',
    ],
    ['broken', 'That picture cannot be read here. Nothing was changed: choose another.'],
    ['full', 'The tablet is full. Nothing was changed: make room, then try again.'],
  ] as const)('that is refused (%s) is told why, and changes nothing', async (why, sentence) => {
    const pictures = makeMemoryPictures((bytes) => (why === 'full' ? bytes : why));
    pictures.rows.set('lane-wheat', { now: jpeg(1) });
    await open(makeFakeWorld({ pictures }));
    toPicture();
    if (why === 'full') pictures.fail('full');
    choose('Choose one', [2]);
    const told = () => document.body.textContent.replaceAll('\u00a0', ' ');
    await until(() => expect(told()).toContain(sentence));
    expect(pictures.rows).toEqual(new Map([['lane-wheat', { now: jpeg(1) }]]));
    expect(large()).not.toBeNull();
  });

  it('is only shown in a page that does not hold the kitchen, and told where none can be kept', async () => {
    const pictures = makeMemoryPictures();
    pictures.rows.set('lane-wheat', { now: jpeg(1) });
    await open(makeFakeWorld({ pictures, holds: false }));
    toPicture();
    await until(() => expect(large()).not.toBeNull());
    for (const name of [/^Use\sthe\scamera/, /^Choose\sone/, /^Take\sit\saway/])
      expect(screen.getByRole('button', { name }).ariaDisabled).toBe('true');
    cleanup();
    pictures.fail('closed');
    await open(makeFakeWorld({ pictures }));
    toPicture();
    choose('Choose one', [2]);
    await until(() =>
      expect(document.body.textContent.replaceAll('\u00a0', ' ')).toContain(
        'This browser will not let pictures be kept.',
      ),
    );
  });
});
