import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { bench } from '../../../src/core/speech/words/bench.ts';
import { bookMore, conventions } from '../../../src/core/speech/words/book.ts';
import { bookParts } from '../../../src/core/speech/words/book-parts.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Book from '../../../src/screens/book/Book.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  speakIn('en');
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const plain = (text: string): string => text.replaceAll('\u00ad', '').replace(/\s/gu, ' ');
/** The presses whose words begin with these. */
const found = (words: string): HTMLElement[] =>
  screen
    .getAllByRole('button')
    .filter((one) => plain(one.textContent).trim().startsWith(plain(words)));
const press = (words: string): void => {
  clock.at += 1_100;
  const [first] = found(words);
  if (first === undefined) throw new Error(`No press begins with ${words}.`);
  tap(first);
};
const open = async (bread: string): Promise<House> => {
  const { house } = await openBaking(makeFakeWorld());
  speakIn('de', de);
  render(() => (
    <PressGround now={clock}>
      <Book house={house} onHome={() => undefined} />
    </PressGround>
  ));
  press(bread);
  return house;
};
const toLine = (words: string): void => {
  press(words);
  if (found(conventions.whole).length > 0) press(conventions.whole);
};
const field = () => screen.getByRole<HTMLInputElement>('textbox');
const write = (text: string): void => {
  field().value = text;
  field().dispatchEvent(new InputEvent('input', { bubbles: true }));
};
const draft = (house: House, id: string) => house.drafts()[id];

// The first of them waits for the chunks.
describe('the name of a part in German', { timeout: 30_000 }, () => {
  it('is shown in its field, and left as it is shown it stays what it is kept as', async () => {
    const house = await open('Kirsche und Haselnuss');
    toLine('Roggenvollkornmehl');
    press(bookParts.about);
    press(bookParts.name);
    expect(field().value).toBe('Roggenvollkornmehl');
    press(bench.thatsIt);
    expect(draft(house, 'cherry-hazelnut')?.flours[1]?.name ?? 'whole rye flour').toBe(
      'whole rye flour',
    );
    press(bookParts.name);
    write('Roggen vom Müller');
    press(bench.thatsIt);
    expect(draft(house, 'cherry-hazelnut')!.flours[1]!.name).toBe('Roggen vom Müller');
  });

  it('that is added from a list is kept in English, and not offered once more', async () => {
    const house = await open('Gassenbrot');
    press(bookParts.addFlour);
    expect(found('starkes Weizenmehl')).toEqual([]);
    press('Dinkelmehl');
    expect(draft(house, 'lane-wheat')!.flours[2]).toMatchObject({
      id: 'spelt-flour',
      name: 'spelt flour',
    });
    expect(found('Dinkelmehl')).toHaveLength(1);
    press(bookMore.filling);
    press('Walnüsse');
    expect(draft(house, 'lane-wheat')!.fillings[0]!.name).toBe('walnuts');
    expect(found('Walnüsse')).toHaveLength(1);
  });
});
