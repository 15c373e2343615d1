import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { letterScenes } from './gallery/letter-scenes.tsx';

afterEach(cleanup);

const isOff = (name: RegExp): boolean =>
  screen.getByRole('button', { name }).getAttribute('aria-disabled') === 'true';

/** Of each: what is written, a key that its page has, and whether there is a word to put back. */
const SHOWN: Readonly<Record<string, readonly [string, RegExp, boolean]>> = {
  'letters: a name': ['', /^A$/, false],
  'letters: a name that is full': ['Mill', /^a$/, false],
  'letters: a note': ['It sang. Less water', /^a$/, false],
  'letters: signs': ['It sang', /^Full stop$/, false],
  'letters: a small letter': ['It sang. ', /^a$/, false],
  'letters: more signs': ['It sang', /^Percent$/, false],
  'letters: a word to put back': ['It sang ', /^a$/, true],
};

it('has each of them looked at', () => {
  expect(Object.keys(letterScenes)).toEqual(Object.keys(SHOWN));
});

it.each(Object.entries(SHOWN))(
  'the scene “%s” stands as it says',
  async (name, [text, key, back]) => {
    const Scene = letterScenes[name]!;
    render(() => <Scene />);
    await Promise.resolve();
    expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe(text);
    expect(screen.getByRole('button', { name: key })).toBeTruthy();
    expect(isOff(/^Put back$/)).toBe(!back);
  },
);
