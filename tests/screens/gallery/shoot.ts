import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';
import solid from 'vite-plugin-solid';

/**
 * Photographs the scenes: `npx tsx tests/screens/gallery/shoot.ts OUT [scene…]`. For eyes; the
 * measures that must hold are taken in tests/browser.
 */
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const [out = '/tmp/gallery', ...only] = process.argv.slice(2);
const views = ['1280x800', '1024x768', '820x1180'];
const manners = (process.env['MANNERS'] ?? ',theme=dark,hands=left,text=bigger').split(',');

const server = await createServer({
  root: here('../../..'),
  configFile: false,
  plugins: [solid()],
  server: { port: 0, host: '127.0.0.1' },
  logLevel: 'error',
});
await server.listen();
const base = server.resolvedUrls?.local[0];
const browser = await chromium.launch({
  executablePath: process.env['CHROME_PATH'] ?? '/usr/bin/chromium',
  args: ['--no-sandbox'],
});
await mkdir(out, { recursive: true });
for (const view of (process.env['VIEWS'] ?? views.join()).split(',')) {
  const [width = 0, height = 0] = view.split('x').map(Number);
  const page = await browser.newPage({ viewport: { width, height } });
  page.on('pageerror', (e) => console.error(view, e));
  for (const manner of manners)
    for (const scene of only) {
      await page.goto(`${base}tests/screens/gallery/index.html?scene=${scene}&${manner}`);
      await page.waitForFunction(() => document.body.firstElementChild !== null);
      await page.evaluate(() => document.fonts.load('600 20px Overpass'));
      const name = [scene, view, manner.split('=')[1]].filter(Boolean).join('-');
      const over = await page.evaluate(() => [
        document.documentElement.scrollWidth - innerWidth,
        document.documentElement.scrollHeight - innerHeight,
      ]);
      if (over.some((n) => n > 0)) console.log(`${name} overflows by ${over.join(' × ')} px`);
      await page.screenshot({ path: `${out}/${name}.png` });
    }
  await page.close();
}
await browser.close();
await server.close();
