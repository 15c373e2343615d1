import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import type { Ear } from '../../../machines/ear-port.ts';
import { writeWave } from '../../../assets/make/voice/wave.ts';
import { HEARD_AT } from '../../../src/core/ear/heard-at.ts';
import { serve } from '../../../src/serve/serve.ts';
import { chromiumPath, FLAGS } from '../../browser/harness/chromium.ts';
import { START_PAGE } from '../begin-at.ts';
import { kitchenNoise } from './noise.ts';

/** So long each is watched, ms; and what a page and its worker do at their beginning is over by then. */
const WATCHED = 20_000;
const SETTLES = 10_000;
/** How loud the kitchen is, of full. */
const LOUD = 0.02;

/** What the processes of a browser have worked so far, s, by their number. */
async function worked(browser: Browser): Promise<ReadonlyMap<number, number>> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return new Map(
    processInfo.filter(({ type }) => type === 'renderer').map(({ id, cpuTime }) => [id, cpuTime]),
  );
}

/** The share of a core that all pages and their threads took, 0–1, while `wait` passed. */
async function shareWhile(browser: Browser, wait: () => Promise<void>): Promise<number> {
  const before = await worked(browser);
  const began = performance.now();
  await wait();
  const after = await worked(browser);
  const seconds = (performance.now() - began) / 1_000;
  const spent = [...after].reduce((sum, [id, now]) => sum + now - (before.get(id) ?? 0), 0);
  return spent / seconds;
}

/**
 * What the ear costs a page of the built app, shares of a core of this machine: before it was ever opened,
 * while it listens to a kitchen in which nobody speaks, and once it is shut.
 */
export async function earShare(
  site: string,
): Promise<{ readonly before: number; readonly open: number; readonly shut: number }> {
  const dir = await mkdtemp(join(tmpdir(), 'loafward-kitchen-'));
  const file = join(dir, 'kitchen.wav');
  const samples = Int16Array.from(kitchenNoise(30 * HEARD_AT, 1), (s) => LOUD * s * 32_767);
  await writeFile(file, writeWave({ rate: HEARD_AT, samples }));
  const server = await serve({ dir: site });
  const microphone = [
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${file}`,
  ];
  const browser = await chromium.launch({
    executablePath: await chromiumPath(),
    args: [...FLAGS, ...microphone],
  });
  try {
    const context = await browser.newContext({ permissions: ['microphone'] });
    const page = await context.newPage();
    // The runner of this script wraps functions in a helper that the page does not have.
    await page.addInitScript('globalThis.__name = (f) => f; globalThis.bring = (at) => import(at)');
    await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
    await page.goto(server.url);
    await page.locator(START_PAGE).waitFor();
    const chunks = await readdir(join(site, 'assets'));
    const at = `/assets/${chunks.find((name) => /^open-ear-.*\.js$/.test(name))}`;
    const watch = async (): Promise<number> => {
      await page.waitForTimeout(SETTLES);
      return shareWhile(browser, () => page.waitForTimeout(WATCHED));
    };
    const before = await watch();
    await page.evaluate(async (path) => {
      const its = globalThis as unknown as { bring(at: string): Promise<unknown>; shut(): void };
      const { openEar } = (await its.bring(path)) as {
        openEar(later: (ms: number, then: () => void) => () => void, audio: () => null): Ear;
      };
      const later = (ms: number, then: () => void) => {
        const timer = setTimeout(then, ms);
        return () => clearTimeout(timer);
      };
      const ear = openEar(later, () => null);
      await new Promise<void>((open, over) => {
        its.shut = ear.listen({ engine: 'plain', people: [], active: ['done'] }, (told) => {
          if (told.kind === 'open') open();
          if (told.kind === 'over') over(new Error(`The ear is over: ${told.why}.`));
        });
      });
    }, at);
    const open = await watch();
    await page.evaluate('shut()');
    return { before, open, shut: await watch() };
  } finally {
    await browser.close();
    await server.close();
    await rm(dir, { recursive: true });
  }
}
