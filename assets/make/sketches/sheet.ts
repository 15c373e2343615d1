/**
 * Lays all sketches on one sheet, their names under them: `npx tsx assets/make/sketches/sheet.ts`
 * writes docs/sketches.png. `--to FILE`, `--only A,B`, `--wide PX` (of one sketch), `--across N`. Needs
 * Chromium where Debian puts it, or where CHROMIUM tells.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { SKETCHES } from '../../../src/core/sketches/sketches.ts';
import { asPng } from './indexed.ts';
import { scenes } from './scenes.ts';

const { values } = parseArgs({
  options: {
    to: { type: 'string' },
    only: { type: 'string' },
    wide: { type: 'string', default: '190' },
    across: { type: 'string', default: '8' },
  },
});
const only = values.only?.split(',');
const all = scenes();
const cells = SKETCHES.filter((name) => only?.includes(name) ?? true).map((name) => {
  const drawn = all[name]?.() ?? '';
  return `<figure>${drawn}<figcaption>${name}</figcaption></figure>`;
});
const font = readFileSync(
  fileURLToPath(
    new URL(
      '../../../node_modules/@fontsource-variable/overpass/files/overpass-latin-wght-normal.woff2',
      import.meta.url,
    ),
  ),
).toString('base64');
const wide = Number(values.wide);
const page = `<!doctype html><style>
@font-face { font-family: o; src: url(data:font/woff2;base64,${font}) }
body { margin: 0; padding: 12px; width: max-content; background: #fbf6ef; color: #2b1730; font: 13px o }
main { display: grid; grid-template-columns: repeat(${values.across}, ${wide}px); gap: 12px }
figure { margin: 0; text-align: center }
svg { display: block; width: ${wide}px; outline: 1px solid #2b173033 }
figcaption { margin-top: 4px }
</style><main>${cells.join('')}</main>`;

/** In the page: the pixels of a PNG, each as the nearest of the 128 colours it has most of. */
async function fewColours(png: string) {
  const image = new Image();
  image.src = `data:image/png;base64,${png}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height);
  const ink = canvas.getContext('2d');
  if (ink === null) throw new Error('no canvas to read the sheet from');
  ink.drawImage(image, 0, 0);
  const { data, width: wide, height: high } = ink.getImageData(0, 0, image.width, image.height);
  const all = Array.from({ length: wide * high }, (_, no) => {
    const [r = 0, g = 0, b = 0] = data.subarray(no * 4, no * 4 + 3);
    return r * 65536 + g * 256 + b;
  });
  const count = new Map<number, number>();
  for (const colour of all) count.set(colour, (count.get(colour) ?? 0) + 1);
  const colours = [...count.keys()]
    .sort((a, b) => (count.get(b) ?? 0) - (count.get(a) ?? 0) || a - b)
    .slice(0, 128);
  const nearest = new Map<number, number>();
  for (const colour of count.keys()) {
    const far = colours.map((other) =>
      [16, 8, 0].reduce(
        (sum, at) => sum + (((colour >> at) & 255) - ((other >> at) & 255)) ** 2,
        0,
      ),
    );
    nearest.set(colour, far.indexOf(Math.min(...far)));
  }
  return { wide, high, colours, pixels: all.map((colour) => nearest.get(colour) ?? 0) };
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox'],
});
try {
  const tab = await browser.newPage();
  await tab.setContent(page);
  const to = values.to ?? fileURLToPath(new URL('../../../docs/sketches.png', import.meta.url));
  const shot = await tab.locator('body').screenshot();
  const { pixels, ...rest } = await tab.evaluate(fewColours, shot.toString('base64'));
  writeFileSync(to, asPng({ ...rest, pixels: Uint8Array.from(pixels) }));
} finally {
  await browser.close();
}
