import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { importsOf, offences } from './walls.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Every written file of a folder, by its path from the root. */
const filesOf = (folder: string) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => /\.(ts|tsx|mjs|css|html)$/.test(path));

describe('the walls between folders', () => {
  test.each(['src', 'machines'])('hold in every file of %s', (folder) => {
    const files = filesOf(folder);
    expect(files.length).toBeGreaterThan(5);
    const found = files.flatMap((path) => offences(path, readFileSync(join(root, path), 'utf8')));
    expect(found).toEqual([]);
  });

  test.each([
    ['src/core/a/b.ts', "import { x } from '../units.ts';"],
    ['machines/bake/bake.ts', "import { setup } from 'xstate';\nimport '../../src/core/units.ts';"],
    ['src/adapters/a.ts', "import type { Stop } from '../../machines/ports.ts';"],
    ['src/adapters/ear/a.ts', "import type { Ear } from '../../../machines/ear-port.ts';"],
    ['src/adapters/a.ts', "import { get } from 'idb-keyval';"],
    ['src/parts/A.tsx', "import './A.css';\nimport { For } from 'solid-js';"],
    ['src/screens/bench/A.tsx', "import type { House } from '../house.ts';"],
    ['src/screens/bench/A.tsx', "import { B } from './deep/B.tsx';"],
    ['src/app/a.tsx', "import { A } from '../screens/bench/A.tsx';\nimport 'solid-js/web';"],
    ['src/serve/a.ts', "import { encode } from 'uqr';\nimport 'node:fs';"],
    ['src/serve/main.ts', "const root = new URL('../../', import.meta.url);"],
  ])('let %s import what it may: %s', (path, text) => {
    expect(offences(path, text)).toEqual([]);
  });

  test.each([
    ['src/core/a.ts', "import { f } from '../../machines/meta.ts';"],
    ['src/core/a.ts', "import { setup } from 'xstate';"],
    ['src/core/a.ts', "import { readFile } from 'node:fs/promises';"],
    ['src/core/a.ts', "export { f } from '../app/keeper.ts';"],
    ['src/core/a.ts', "type Kitchen = import('../../machines/kitchen/kitchen.ts').Kitchen;"],
    ['src/core/a.ts', "const late = () => import('solid-js');"],
    ['src/core/a.ts', "const w = new Worker(new URL('../adapters/ear.ts', import.meta.url));"],
    ['machines/a.ts', "import { f } from '../src/adapters/clock.ts';"],
    ['machines/a.ts', "import { createSignal } from 'solid-js';"],
    ['src/adapters/a.ts', "import { f } from '../../machines/meta.ts';"],
    ['src/adapters/a.ts', "import type { House } from '../screens/house.ts';"],
    ['src/adapters/a.ts', "import { createActor } from 'xstate';"],
    ['src/parts/A.tsx', "import { f } from '../../machines/meta.ts';"],
    ['src/parts/A.tsx', "import { B } from '../screens/bench/B.tsx';"],
    ['src/screens/bench/A.tsx', "import { B } from '../start/B.tsx';"],
    ['src/screens/bench/A.tsx', "import { f } from '../../adapters/clock.ts';"],
    ['src/screens/bench/A.tsx', "import { f } from '../../app/keeper.ts';"],
    ['src/screens/house.ts', "import { A } from './bench/A.tsx';"],
    ['src/app/a.ts', "import { serve } from '../serve/serve.ts';"],
    ['src/app/a.ts', "import { f } from '../../tests/fakes/records.ts';"],
    ['src/serve/a.ts', "import { MINUTE } from '../core/units.ts';"],
    ['src/serve/prepare.mjs', "import { encode } from 'uqr';"],
    ['src/serve/prepare/a.mjs', "import { serve } from '../serve.ts';"],
  ])('stop %s: %s', (path, text) => {
    expect(offences(path, text).join()).toMatch(/ may not import /);
  });

  test('stop a long file, a collecting file, a missing ending and a folder without a wall', () => {
    const long = (lines: number) => 'export {};\n'.repeat(lines);
    expect(offences('src/core/a.ts', long(250))).toEqual([]);
    expect(offences('src/core/a.ts', long(251))).toEqual([
      'src/core/a.ts has 251 lines; 250 is the most.',
    ]);
    expect(offences('src/parts/a.css', long(251))).toHaveLength(1);
    expect(offences('src/core/index.ts', '')).toHaveLength(1);
    expect(offences('machines/bake/index.tsx', '')).toHaveLength(1);
    expect(offences('src/core/a.ts', "import '../core/units';")).toHaveLength(1);
    expect(offences('src/other/a.ts', '')).toHaveLength(1);
  });
});

describe('reading imports', () => {
  test('finds them behind JSX and text that looks like the end of one', () => {
    const text = "const A = () => <p title={`a`}>don't</p>;\nconst b = () => import('./b.ts');";
    expect(importsOf('src/parts/A.tsx', text)).toEqual(['./b.ts']);
  });

  test('is not led astray by comments and strings', () => {
    const text = "// import './a.ts';\nconst said = `import './b.ts'`;";
    expect(importsOf('src/core/a.ts', text)).toEqual([]);
  });
});
