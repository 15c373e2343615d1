import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, it } from 'vitest';
import { EAR_WEIGHT } from '../../src/core/ear/ear-weight.ts';
import { readSite } from '../../src/serve/site.ts';
import { firstLoad } from './harness/first-load.ts';
import { openApp } from './harness/open-app.ts';

it('first asks for at most 45 kB of script and style, packed', () => {
  const { files, bytes } = firstLoad(inject('site'));
  expect(files.length).toBeGreaterThan(1);
  expect(bytes).toBeLessThanOrEqual(45_000);
});

it('does not first ask for the sound library', () => {
  const site = inject('site');
  for (const { file } of firstLoad(site).files) {
    expect(readFileSync(join(site, file), 'utf8'), file).not.toContain('HowlerGlobal');
  }
});

it('does not first ask for the ear, nor for its libraries', () => {
  const site = inject('site');
  for (const { file } of firstLoad(site).files)
    expect(readFileSync(join(site, file), 'utf8'), file).not.toMatch(/audioWorklet|mfcc|onnx/i);
});

it('says what the learned ear weighs, as a tablet that takes no tighter packing fetches it', async () => {
  const files = [...(await readSite(inject('site')))].filter(([path]) =>
    /\.(wasm|onnx)$/.test(path),
  );
  expect(files).toHaveLength(3);
  const weighs = files.reduce(
    (sum, [, { packed, body }]) => sum + (packed('gzip') ?? body).length,
    0,
  );
  expect(weighs).toBeLessThanOrEqual(EAR_WEIGHT);
  expect(weighs).toBeGreaterThan(0.97 * EAR_WEIGHT);
});

/** Each is a question to the server and an answer: a slow one takes as long about a small file. */
const MOST_PIECES = 40;

it('opens on the start page in few pieces', async () => {
  const app = await openApp();
  // What the first visit still asks for is none of the second.
  await app.page.locator('.start-grid').waitFor();
  await app.page.waitForLoadState('networkidle');
  const asked: string[] = [];
  app.page.on('request', (request) => asked.push(request.url()));
  await app.page.reload();
  await app.page.locator('.start-grid').waitFor();
  expect(asked.length).toBeGreaterThan(5);
  expect(asked.length, asked.join('\n')).toBeLessThanOrEqual(MOST_PIECES);
});
