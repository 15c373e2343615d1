import { readdirSync, readFileSync } from 'node:fs';
import { join, posix, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { earlyReads, type Read } from './early-reads.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const catalogues: Read = Object.fromEntries(
  Object.entries(
    import.meta.glob<Record<string, unknown>>('../../src/core/speech/words/*.ts', { eager: true }),
  ).map(([path, exports]) => [posix.normalize(posix.join('tests/lint', path)), exports]),
);

test('no word is read when its module is loaded: another tongue may stand later', () => {
  const files = ['src', 'machines'].flatMap((folder) =>
    readdirSync(root + folder, { recursive: true, encoding: 'utf8' })
      .map((file) => join(folder, file).replaceAll(sep, '/'))
      .filter((file) => /\.tsx?$/.test(file)),
  );
  expect(files.length).toBeGreaterThan(500);
  const found = files.flatMap((file) => {
    const text = readFileSync(root + file, 'utf8');
    const mayRead = file in catalogues || text.includes('/words/');
    return mayRead ? earlyReads(file, text, catalogues) : [];
  });
  expect(found).toEqual([]);
});

const words: Read = {
  'src/core/speech/words/x.ts': { x: { a: 'A', deep: { b: 'B' } }, list: ['one'], LINE: 'line' },
};
const reads = (text: string) =>
  earlyReads(
    'src/screens/a.ts',
    `import { x, list, LINE } from '../core/speech/words/x.ts';\n${text}`,
    words,
  ).length;

test('each way of reading too early is found', () => {
  for (const text of [
    'const made = { a: x.a };',
    'const made = x.deep.b;',
    'const made = x[key];',
    'const made = { ...x };',
    'const made = [...list];',
    'const { a } = x;',
    'const its = x; const made = its.a;',
    'const { deep } = x; const made = deep.b;',
    'const made = Object.values(x);',
    'const made = list.map((one) => one);',
    'const made = KEYS.map((key) => x.deep[key]);',
    'const made = label(x.a);',
    'const made = LINE;',
  ])
    expect(reads(text), text).toBeGreaterThan(0);
});

test('within a catalogue’s own file too', () => {
  const own: Read = { 'words/y.ts': { y: { part: { a: 'A' } }, plain: { a: 'A' } } };
  const makes = "export const y = inTongue('y', 'y', plain);";
  expect(earlyReads('words/y.ts', `${makes} const z = { ...y.part };`, own)).toHaveLength(1);
  expect(earlyReads('words/y.ts', `${makes} const z = { ...plain };`, own)).toEqual([]);
});

test('what is read in a function, or kept as a part, is not too early', () => {
  for (const text of [
    'const made = () => x.a;',
    'function made() { return { ...x }; }',
    'const made = { deep: x.deep };',
    'const made = { ...{ x } };',
    'const its: Readonly<Record<string, string>> = x;',
    'const made = lazy(() => x.a);',
    'type Made = typeof x.a; const made: Made | null = null;',
  ])
    expect(reads(text), text).toBe(0);
});
