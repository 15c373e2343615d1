import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { createServer } from 'vite';
import { sharedBrowser } from './chromium.ts';
import { closeLater } from './open.ts';
import { START, VIEWPORTS, type ViewportName } from './open-app.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));

export interface Parts {
  readonly page: Page;
  /** Shows a scene of the gallery, its clock standing still until turned. */
  show(scene: string, viewport: ViewportName, ways?: string): Promise<void>;
  turn(ms: number): Promise<void>;
}

/** The parts' own page, as `npm run dev` serves it, without the app. Closed by itself at the end of the file. */
export async function openParts(): Promise<Parts> {
  const server = await createServer({
    configFile: fileURLToPath(new URL('../../../vite.config.ts', import.meta.url)),
    root: fileURLToPath(new URL('../../../src/', import.meta.url)),
    cacheDir: `${root}node_modules/.vite-parts`,
    server: { port: 0, host: '127.0.0.1', hmr: false, watch: null },
    logLevel: 'error',
  });
  await server.listen();
  closeLater(() => server.close());
  const base = server.resolvedUrls?.local[0] ?? '';
  const context = await (await sharedBrowser()).newContext({ hasTouch: true });
  closeLater(() => context.close());
  await context.clock.install({ time: START - 1 });
  await context.clock.pauseAt(START);
  const page = await context.newPage();
  return {
    page,
    async show(scene, viewport, ways = '') {
      await page.setViewportSize(VIEWPORTS[viewport]);
      await page.goto(`${base}parts.html?scene=${scene}&${ways}`);
      await page.locator('.bench').waitFor();
      await page.evaluate(() => document.fonts.ready);
      await context.clock.runFor(1_100);
    },
    turn: (ms) => context.clock.runFor(ms),
  };
}
