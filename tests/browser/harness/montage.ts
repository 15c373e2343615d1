import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sharedBrowser } from './chromium.ts';

const out = fileURLToPath(new URL('../out/', import.meta.url));

export interface Photo {
  readonly name: string;
  readonly png: Buffer;
}

/** Lays photographs out in columns, each with its name, as one picture in tests/browser/out. Gives its path. */
export async function montage(
  name: string,
  photos: readonly Photo[],
  columns = 5,
): Promise<string> {
  await mkdir(out, { recursive: true });
  const page = await (await sharedBrowser()).newPage({ viewport: { width: 1900, height: 100 } });
  const figures = photos.map(
    (photo) =>
      `<figure><img src="data:image/png;base64,${photo.png.toString('base64')}">` +
      `<figcaption>${photo.name}</figcaption></figure>`,
  );
  await page.setContent(
    `<style>body{margin:8px;display:grid;gap:8px;grid-template-columns:repeat(${columns},1fr);font:13px sans-serif}` +
      `figure{margin:0}img{width:100%;display:block}</style>${figures.join('')}`,
  );
  await page.evaluate(() => Promise.all([...document.images].map((image) => image.decode())));
  const path = join(out, `${name}.png`);
  await page.screenshot({ path, fullPage: true });
  await page.close();
  return path;
}
