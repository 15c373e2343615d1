import { afterEach, expect, test } from 'vitest';
import { loadTongue, tongueOf } from '../../src/app/load-tongue.ts';
import { speakIn, tongue } from '../../src/core/speech/tongue.ts';
import { ways } from '../../src/core/speech/words/ways.ts';

afterEach(() => speakIn('en'));

const words = { ways: { ways: { title: 'Wie es sich zeigt' } } };
const load = { de: () => Promise.resolve(words), fr: () => Promise.reject(new Error('No net.')) };

test('the first of the tablet’s languages that the program has is its tongue', () => {
  expect(tongueOf(['de-AT', 'en'])).toBe('de');
  expect(tongueOf(['nl', 'fr_CA', 'de'])).toBe('fr');
  expect(tongueOf(['en-GB', 'de'])).toBe('en');
  expect(tongueOf(['nl'])).toBe('en');
  expect(tongueOf([])).toBe('en');
});

test('words are read in the tongue that was loaded, and the page says which it is', async () => {
  const root = { lang: 'en' };
  await loadTongue('de', root, load);
  expect(root.lang).toBe('de');
  expect(tongue()).toBe('de');
  expect(ways.title).toBe('Wie es sich zeigt');
  expect(ways.theme.name, 'what it has no words for stays English').toBe('Page');
  await loadTongue('en', root, load);
  expect(root.lang).toBe('en');
  expect(ways.title).toBe('Ways of showing');
});

test('where a tongue’s words do not come the page stands in English', async () => {
  const root = { lang: 'en' };
  await loadTongue('fr', root, load);
  expect(root.lang).toBe('en');
  expect(tongue()).toBe('en');
});
