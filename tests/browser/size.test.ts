import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, it } from 'vitest';
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
