import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** All that lies beside each other at the top; names with a dot in front belong to tools. */
const THERE = [
  ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'],
  ...['tsconfig.json', 'vite.config.ts', 'eslint.config.js'],
  ...['src', 'machines', 'assets', 'tests', 'docs'],
];

/** Folders and endings that are no part of it, as they stand in the list of what is not kept. */
const ignored = readFileSync(`${root}.gitignore`, 'utf8')
  .split('\n')
  .map((line) => line.replace(/^\*|\/$/g, ''))
  .filter((line) => line !== '');

test('the top level holds what it is said to hold, and nothing else', () => {
  const found = readdirSync(root).filter(
    (name) => !name.startsWith('.') && !ignored.some((end) => name.endsWith(end)),
  );
  expect(found.toSorted()).toEqual(THERE.toSorted());
});
