import { expect, test } from 'vitest';
import { speakIn } from '../../src/core/speech/tongue.ts';

/** Catalogues of a tongue that has every word, and notes which were read. */
function everyWord(read: string[], where: string): Readonly<Record<string, never>> {
  return new Proxy({} as Record<string, never>, {
    get(_, key) {
      read.push(`${where}.${String(key)}`);
      return everyWord(read, `${where}.${String(key)}`);
    },
  });
}

const modules = import.meta.glob([
  '../../src/**/*.{ts,tsx}',
  '!../../src/app/main.tsx',
  '!../../src/{serve,adapters}/**',
]);

test('no module reads a word when it is loaded: what it read would stay in another tongue', async () => {
  const read: string[] = [];
  speakIn('de', everyWord(read, 'words'));
  for (const load of Object.values(modules)) await load();
  speakIn('en');
  expect(Object.keys(modules).length).toBeGreaterThan(500);
  expect(read).toEqual([]);
}, 240_000);
