import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import { de } from '../../src/core/speech/de.ts';
import { fr } from '../../src/core/speech/fr.ts';
import { book, bookMore } from '../../src/core/speech/words/book.ts';
import { start } from '../../src/core/speech/words/start.ts';
import { speakIn, type Tongue } from '../../src/core/speech/tongue.ts';
import { bench } from '../../src/core/speech/words/bench.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import Book from '../../src/screens/book/Book.tsx';
import type { House } from '../../src/screens/house.ts';
import type { Draft } from '../../src/screens/start/draft.ts';
import Start from '../../src/screens/start/Start.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

vi.setConfig({ testTimeout: 30_000 });

const OTHERS = { en: {}, fr, de } as const;
const clock = turnedClock();
beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  speakIn('en');
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const OWN = 'Lane wheat of B';
/** A house with a bread of the baker's own, and a bake that runs. */
const openIn = async (tongue: Tongue): Promise<House> => {
  speakIn(tongue, OTHERS[tongue]);
  const { house, formula, begin } = await openBaking(makeFakeWorld());
  await house.keepFormula({ ...formula, id: 'own', name: OWN });
  await begin('bulk.proving');
  return house;
};
const press = (name: string): void => {
  clock.at += 1_100;
  const buttons = screen.getAllByRole('button');
  const found = buttons.find((one) => plain(one).startsWith(name));
  if (!found) throw new Error(`No button ${name}.`);
  tap(found);
};
const plain = (el: Element): string =>
  el.textContent.replaceAll('\u00a0', ' ').replaceAll('\u00ad', '');

it.each([
  ['de', 'Gassenbrot', 'Kirsche und Haselnuss'],
  ['fr', 'Miche de la ruelle', 'Cerise et noisette'],
] as const)(
  'are those of %s in the Book, where one is renamed too',
  async (tongue, lane, cherry) => {
    const house = await openIn(tongue);
    render(() => (
      <PressGround now={clock}>
        <Book house={house} onHome={() => undefined} />
      </PressGround>
    ));
    const listed = [...document.querySelectorAll('.book-entry b')].map(plain);
    expect(listed).toEqual(expect.arrayContaining([lane, cherry, OWN]));
    expect(listed).not.toContain('Lane wheat');
    press(lane);
    expect(plain(screen.getByRole('heading', { level: 1 }))).toBe(lane);
    press(book.more);
    press(bookMore.name);
    expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe(lane);
    press(bench.thatsIt);
    // As it is shown it is no other name.
    expect(house.drafts()).toEqual({});
  },
);

it.each([
  ['de', 'Kirsche'],
  ['fr', 'Cerise'],
] as const)('are those of %s on Start, of what may be baked and what is', async (tongue, short) => {
  const house = await openIn(tongue);
  const chosen = createSignal<Draft | null>(null);
  render(() => (
    <PressGround now={clock}>
      <Start
        house={house}
        onBake={() => undefined}
        onKitchen={() => undefined}
        onDay={() => undefined}
        onBook={() => undefined}
        onCircle={() => undefined}
        onLog={() => undefined}
        chosen={chosen}
      />
    </PressGround>
  ));
  expect([...document.querySelectorAll('.bake-name')].map(plain)).toEqual([short]);
  press(start.formula);
  const tiles = [...document.querySelectorAll('.tile')].map(plain);
  expect(tiles).toContain(OWN);
  expect(tiles.join()).toContain(short);
  expect(tiles).not.toContain('Cherry and hazelnut');
});

it('are kept in English: facts and the saved file are the same in every tongue', async () => {
  const saved = async (tongue: Tongue): Promise<string> => {
    const file = new Promise<Blob>((resolve) => {
      vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
        resolve(blob as Blob);
        return 'blob:loafward/1';
      });
    });
    const house = await openIn(tongue);
    house.saveAsFile();
    const text = await (await file).text();
    expect(text).toContain('"Cherry and hazelnut"');
    await vi.waitFor(() => expect(house.equipment().savedAt).not.toBeNull());
    return text;
  };
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue();
  const english = await saved('en');
  expect(await saved('de')).toBe(english);
  expect(await saved('fr')).toBe(english);
});
