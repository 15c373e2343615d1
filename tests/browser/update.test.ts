import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import ts from 'typescript';
import { expect, inject, onTestFinished, test } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { folder } from '../serve/folder.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, untilKept } from './harness/open-app.ts';

const ADAPTER = fileURLToPath(new URL('../../src/adapters/update.ts', import.meta.url));

/** A page that shows its version, counts offers and keeps the last one. */
const page = (version: string) =>
  '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Update</title><link rel="icon" href="/icons/loafward.svg">' +
  `<script type="module" src="/page.js"></script></head><body>${version}</body></html>`;
const SCRIPT = `
import { makeUpdate } from '/update.js';
window.offers = 0;
makeUpdate().update.onOffer((take) => { window.offers += 1; window.take = take; });
`;
interface Offered {
  offers: number;
  take: () => void;
}

/** The real build with its real worker, but the page above in place of the app. */
async function version(name: string) {
  const dir = await folder();
  await cp(inject('site'), dir, { recursive: true });
  const { outputText } = ts.transpileModule(await readFile(ADAPTER, 'utf8'), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  });
  await writeFile(join(dir, 'update.js'), outputText);
  await writeFile(join(dir, 'page.js'), SCRIPT);
  await writeFile(join(dir, 'index.html'), page(name));
  const worker = await readFile(join(dir, 'sw.js'), 'utf8');
  const revised = worker.replace(/(url:"index\.html",revision:")[^"]+/, `$1${name}`);
  expect(revised).not.toBe(worker);
  await writeFile(join(dir, 'sw.js'), revised);
  return dir;
}

const seen = (at: Page) => at.evaluate(() => document.body.textContent);
const offers = (at: Page) =>
  at.evaluate(() => (globalThis as unknown as Partial<Offered>).offers ?? -1);
const take = (at: Page) => at.evaluate(() => (globalThis as unknown as Offered).take());

test('a new version is offered, waits, and comes only when taken', async () => {
  const first = await serve({ dir: await version('first') });
  onTestFinished(() => first.close());
  const app = await openApp({ server: first, clock: 'real', kept: true });
  await untilKept(app.page);
  await expect.poll(() => offers(app.page)).toBe(0);

  const second = { dir: await version('second'), port: first.port };
  await first.close();
  const server = await serve(second);
  onTestFinished(() => server.close());
  expect(server.port).toBe(first.port);

  // Looked at again: the page asks for itself. Nothing changes but the offer.
  await app.page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect.poll(() => offers(app.page)).toBe(1);
  expect(await seen(app.page)).toBe('first');

  // Another visit is still the old version, and is offered the new one too.
  const other = await app.context.newPage();
  await other.goto(app.server.url);
  expect(await seen(other)).toBe('first');
  await expect.poll(() => offers(other)).toBe(1);

  const reloaded = app.page.waitForEvent('domcontentloaded');
  await take(app.page);
  await reloaded;
  await expect.poll(() => seen(app.page)).toBe('second');

  // The other page is not torn from its baker's hands: its reload is an offer.
  await expect.poll(() => offers(other)).toBe(2);
  expect(await seen(other)).toBe('first');
  const followed = other.waitForEvent('domcontentloaded');
  await take(other);
  await followed;
  await expect.poll(() => seen(other)).toBe('second');
  expect(await offers(app.page)).toBe(0);
  expectNoFaults(app.faults);
});
