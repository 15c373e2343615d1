import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string) => readFileSync(join(root, path), 'utf8');

interface Package {
  version: string;
  license: string;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
}

/** Licences under which what we ship, or run to ship it, may be passed on with the project. */
const GOOD = ['MIT', 'Apache-2.0', 'BSD-2-Clause', 'OFL-1.1', 'MPL-2.0'];

test('docs/licences.md names every package we use, as it is installed, and no other', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Package;
  const used = Object.keys({ ...dependencies, ...devDependencies }).map((name) => {
    const path = `node_modules/${name}/package.json`;
    if (!existsSync(join(root, path)))
      throw new Error(`${name} is not installed: run npm install.`);
    const { version, license } = JSON.parse(read(path)) as Package;
    return `${name} ${version} ${license}`;
  });
  const named = [...read('docs/licences.md').matchAll(/^\| (\S+) \| ([\d.]+) \| (\S+) \|/gm)].map(
    ([, name, version, license]) => `${name} ${version} ${license}`,
  );
  expect(named.sort()).toEqual(used.sort());
  for (const entry of used) expect(GOOD).toContain(entry.split(' ')[2]);
});
