/**
 * Draws the icons: a ruled edge with ticks, and beside it a slab with one clipped corner.
 * Run `node assets/make/icons.mjs` after a change here; the files in assets/icons are committed.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findBrowser } from '../../src/serve/prepare/find-browser.mjs';

const GROUND = '#F6F3EA';
const INK = '#172033';
const SLAB = '#123E6B';

const icons = fileURLToPath(new URL('../icons/', import.meta.url));

/** Nine ticks down the edge; every fourth is long, and the one at the slab's middle the longest. */
function ticks() {
  const lengths = [64, 36, 36, 36, 96, 36, 36, 36, 64];
  return lengths
    .map((length, i) => `<rect x="96" y="${56 + i * 48}" width="${length}" height="16"/>`)
    .join('');
}

/** The picture on a 512 grid; `scale` shrinks it about the middle, the ground fills all. */
function picture(scale) {
  const shift = 256 * (1 - scale);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512" width="512" height="512">
<rect width="512" height="512" fill="${GROUND}"/>
<g transform="translate(${shift} ${shift}) scale(${scale})">
<g fill="${INK}"><rect x="80" y="56" width="16" height="400"/>${ticks()}</g>
<path fill="${SLAB}" d="M216 120H360L440 200V392H216Z"/>
</g>
</svg>
`;
}

/** What a launcher may cut away is a fifth all round: a maskable picture stays inside. */
const FILES = [
  { name: 'any-192', size: 192, scale: 1 },
  { name: 'any-512', size: 512, scale: 1 },
  { name: 'maskable-192', size: 192, scale: 0.72 },
  { name: 'maskable-512', size: 512, scale: 0.72 },
  { name: 'touch-180', size: 180, scale: 0.88 },
];

const executablePath = await findBrowser();
if (!executablePath) throw new Error('No Chromium was found to draw the icons with.');
await mkdir(icons, { recursive: true });
await writeFile(`${icons}loafward.svg`, picture(1));

const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
const page = await browser.newPage();
for (const { name, size, scale } of FILES) {
  await page.setViewportSize({ width: size, height: size });
  const drawn = picture(scale).replace('width="512" height="512">', `width="${size}">`);
  await page.setContent(`<body style="margin:0"><style>svg{display:block}</style>${drawn}</body>`);
  await page.screenshot({ path: `${icons}${name}.png` });
}
await browser.close();
