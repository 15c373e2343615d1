import { spawn } from 'node:child_process';
import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { checkNode } from '../../src/serve/prepare/check-node.mjs';
import { findBrowser } from '../../src/serve/prepare/find-browser.mjs';
import { findRecogniser } from '../../src/serve/prepare/find-recogniser.mjs';
import { getBrowser } from '../../src/serve/prepare/get-browser.mjs';
import { getRecogniser } from '../../src/serve/prepare/get-recogniser.mjs';
import { folder } from './folder.ts';
import { machine } from './machine.ts';

const SOURCE = fileURLToPath(new URL('../../src/serve/', import.meta.url));

/** An npm that notes what it was asked, fails where told to, and installs one package. */
const NPM = `
const { appendFileSync, existsSync, mkdirSync, writeFileSync } = require('node:fs');
appendFileSync('asked.txt', process.argv.slice(2).join(' ') + '\\n');
if (process.env.FAIL?.split(',').includes(process.argv[2])) process.exit(1);
mkdirSync('node_modules/flour', { recursive: true });
writeFileSync('node_modules/.package-lock.json', '{}');
`;

const lock = (version: string) =>
  JSON.stringify({ packages: { '': {}, 'node_modules/flour': { version } } });

/** A fresh clone that holds the preparing script alone, with a lockfile and a false npm. */
async function clone() {
  const root = await folder({
    'package.json': JSON.stringify({ engines: { node: '>=20.19' } }),
    'package-lock.json': lock('1.0.0'),
    'bin/npm-cli.js': NPM,
  });
  await mkdir(join(root, 'src/serve'), { recursive: true });
  await cp(join(SOURCE, 'prepare.mjs'), join(root, 'src/serve/prepare.mjs'));
  await cp(join(SOURCE, 'prepare'), join(root, 'src/serve/prepare'), { recursive: true });
  const prepare = (env: Record<string, string> = {}, args: string[] = []) =>
    new Promise<{ code: number | null; said: string }>((resolve) => {
      const child = spawn(process.execPath, [join(root, 'src/serve/prepare.mjs'), ...args], {
        env: { ...process.env, npm_execpath: join(root, 'bin/npm-cli.js'), ...env },
      });
      let said = '';
      child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
      child.once('close', (code) => resolve({ code, said }));
    });
  const asked = () => readFile(join(root, 'asked.txt'), 'utf8').catch(() => '');
  return { root, prepare, asked };
}

describe('preparing a clone', () => {
  test('installs by the lockfile once, with the tools, and then has nothing to do', async () => {
    const { prepare, asked } = await clone();
    expect((await prepare()).code).toBe(0);
    expect((await prepare()).code).toBe(0);
    expect(await asked()).toBe('ci --include=dev\n');
  });

  test('installs again when the lockfile changes, or when the packages are gone', async () => {
    const { root, prepare, asked } = await clone();
    await prepare();
    await writeFile(join(root, 'package-lock.json'), lock('1.0.1'));
    await prepare();
    expect(await asked()).toBe('ci --include=dev\n'.repeat(2));
    await rm(join(root, 'node_modules'), { recursive: true });
    await prepare();
    expect(await asked()).toBe('ci --include=dev\n'.repeat(3));
  });

  test('believes what npm installed by hand, if it is what the lockfile names', async () => {
    const { root, prepare, asked } = await clone();
    await mkdir(join(root, 'node_modules/flour'), { recursive: true });
    await writeFile(join(root, 'node_modules/.package-lock.json'), lock('1.0.0'));
    await prepare();
    expect(await asked()).toBe('');
    await writeFile(join(root, 'package-lock.json'), lock('2.0.0'));
    await prepare();
    expect(await asked()).toBe('ci --include=dev\n');
  });

  test('installs anew when node_modules was carried over from another system', async () => {
    const { root, prepare, asked } = await clone();
    await prepare();
    await writeFile(join(root, 'node_modules/.package-lock.json'), lock('1.0.0'));
    const stamp = join(root, 'node_modules/.loafward-stamp');
    await writeFile(stamp, (await readFile(stamp, 'utf8')).replace(process.platform, 'elsewhere'));
    await prepare();
    expect(await asked()).toBe('ci --include=dev\n'.repeat(2));
  });

  test('falls back to npm install, and says so when that fails too', async () => {
    const mended = await clone();
    expect((await mended.prepare({ FAIL: 'ci' })).code).toBe(0);
    expect(await mended.asked()).toBe('ci --include=dev\ninstall --include=dev\n');

    const { prepare, asked } = await clone();
    const { code, said } = await prepare({ FAIL: 'ci,install' });
    expect(code).toBe(1);
    expect(said).toContain('The packages could not be installed');
    await prepare();
    expect(await asked()).toBe('ci --include=dev\ninstall --include=dev\nci --include=dev\n');
  });

  test('two at once install once, and a lock left by a dead run does not hold', async () => {
    const { root, prepare, asked } = await clone();
    const dead = spawn(process.execPath, ['-e', '']);
    await new Promise((resolve) => dead.once('close', resolve));
    await writeFile(join(root, '.prepare.lock'), String(dead.pid));
    const codes = await Promise.all([prepare(), prepare(), prepare()]);
    expect(codes.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(await asked()).toBe('ci --include=dev\n');
  });

  test('a chosen browser that is not there is named, and the run goes on', async () => {
    const { root, prepare } = await clone();
    // No program can be found or run, apt-get neither.
    const nothing = { CHROME_PATH: '/nowhere/chrome', PATH: join(root, 'bin') };
    const { code, said } = await prepare(nothing, ['--browser']);
    expect(code).toBe(0);
    expect(said).toContain('CHROME_PATH is /nowhere/chrome, and there is no such file.');
    expect(said).toContain('No pocketsphinx was found and none could be installed');
    expect(said).toContain('No espeak-ng and flite were found');
  });
});

describe('the Node it runs on', () => {
  test.each(['20.19.0', '20.20.2', '22.0.0', '100.1.0'])('%s is new enough', (version) => {
    expect(checkNode(version, '>=20.19')).toBeNull();
  });

  test.each(['20.18.9', '18.20.4', '9.11.2'])('%s is refused in a sentence', (version) => {
    expect(checkNode(version, '>=20.19')).toBe(
      `Loafward needs Node 20.19 or newer, and this is Node ${version}. ` +
        'Install a newer Node, open a new terminal and run the command again.',
    );
  });
});

describe('the browser', () => {
  test('the chosen one wins, and a wrong choice is not replaced behind the back', async () => {
    const bin = await folder({ chosen: '', chromium: '' });
    expect(await findBrowser({ CHROME_PATH: join(bin, 'chosen'), PATH: bin })).toBe(
      join(bin, 'chosen'),
    );
    expect(await findBrowser({ CHROME_PATH: join(bin, 'gone'), PATH: bin })).toBeNull();
  });

  test('the plainest name on the PATH is taken', async () => {
    const one = await folder({ 'google-chrome': '' });
    const two = await folder({ chromium: '' });
    expect(await findBrowser({ PATH: `${one}:${two}` })).toBe(join(two, 'chromium'));
    expect(await findBrowser({ PATH: one })).toBe(join(one, 'google-chrome'));
  });

  const browserOn = (canApt: boolean, works: RegExp | null) => {
    const { there, world, ...rest } = machine(canApt, works);
    const find = () => Promise.resolve(there() ? '/usr/bin/chromium' : null);
    return { ...rest, world: { ...world, find, chosen: undefined } };
  };

  test('root on Debian gets it by apt-get, which waits for others', async () => {
    const { world, ran } = browserOn(true, /^apt-get .* chromium$/);
    expect(await getBrowser(world)).toBe('/usr/bin/chromium');
    expect(ran).toEqual([
      'apt-get update',
      'apt-get -o DPkg::Lock::Timeout=300 install -y --no-install-recommends chromium',
    ]);
  });

  test('elsewhere playwright-core fetches it', async () => {
    const { world, ran } = browserOn(false, /playwright-core.* chromium$/);
    expect(await getBrowser(world)).toBe('/usr/bin/chromium');
    expect(ran).toEqual([
      `${process.execPath} node_modules/playwright-core/cli.js install chromium`,
    ]);
  });

  test('where nothing helps, it says what to do', async () => {
    const { world, ran, said } = browserOn(true, null);
    expect(await getBrowser(world)).toBeNull();
    expect(ran).toHaveLength(3);
    expect(said.at(-1)).toContain('Install Chromium or Google Chrome, or set CHROME_PATH to one.');
  });
});

describe('what the voice is recognised with', () => {
  const SPHINX = { program: '/usr/bin/pocketsphinx_batch', sounds: '/s', words: '/w' };
  const recogniserOn = (canApt: boolean, works: RegExp | null) => {
    const { there, world, ...rest } = machine(canApt, works);
    return { ...rest, world: { ...world, find: () => (there() ? SPHINX : null) } };
  };

  test('is the program on the PATH with its English beside, and nothing without either', async () => {
    const bin = await folder({ pocketsphinx_batch: '' });
    const model = await folder({ 'en-us/mdef': '', 'cmudict-en-us.dict': '' });
    expect(findRecogniser({ PATH: `/nowhere:${bin}` }, ['/nowhere', model])).toEqual({
      program: join(bin, 'pocketsphinx_batch'),
      sounds: join(model, 'en-us'),
      words: join(model, 'cmudict-en-us.dict'),
    });
    expect(findRecogniser({ PATH: '/nowhere' }, [model])).toBeNull();
    expect(findRecogniser({ PATH: bin }, ['/nowhere'])).toBeNull();
  });

  test('root on Debian gets it by apt-get, once', () => {
    const { world, ran } = recogniserOn(true, /^apt-get .* pocketsphinx pocketsphinx-en-us$/);
    expect(getRecogniser(world)).toEqual(SPHINX);
    expect(getRecogniser(world)).toEqual(SPHINX);
    expect(ran).toEqual([
      'apt-get update',
      'apt-get -o DPkg::Lock::Timeout=300 install -y --no-install-recommends pocketsphinx pocketsphinx-en-us',
    ]);
  });

  test.each([true, false])('where it cannot be had that is said: apt-get %s', (canApt) => {
    const { world, ran, said } = recogniserOn(canApt, null);
    expect(getRecogniser(world)).toBeNull();
    expect(ran).toHaveLength(canApt ? 2 : 0);
    expect(said.at(-1)).toContain('is not tested in this run, and the count says so');
  });
});
