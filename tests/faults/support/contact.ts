import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import type { App, ViewportName } from '../../browser/harness/open-app.ts';
import { captionCovers } from '../../browser/harness/caption.ts';
import { montage, type Photo } from '../../browser/harness/montage.ts';
import type { Slice } from './slices.ts';

const out = fileURLToPath(new URL('../../browser/out/', import.meta.url));

/** The pictures of the README: written to tests/browser/out/readme, to be copied to docs/pictures. */
const README: Readonly<Record<string, string>> = {
  'levain-ripening, wide, light': 'waiting',
  'levain-feed-1, wide, light': 'weighing',
  'load-lidded-rings, wide, light': 'lid-call',
  'bulk-between-1, tall, dark': 'tall-dark',
  'day, the plan, wide, light': 'day',
  'the day so far, moved, wide, light': 'day-moved',
};

const PER_SHEET: Readonly<Record<ViewportName, readonly [columns: number, photos: number]>> = {
  wide: [4, 24],
  small: [4, 20],
  tall: [6, 18],
};

/** Photographs one app in one slice and lays the pictures out on sheets for eyes. */
export function contact(app: App, name: string, { view, theme }: Slice) {
  const photos: Photo[] = [];
  return {
    /** Photographs what stands on the screen. Whatever reaches out of it is a fault. */
    async shoot(state: string): Promise<void> {
      // What is said of it is captioned right after its paint.
      await app.turn(80);
      await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      const png = await app.page.screenshot();
      photos.push({ name: state, png });
      const readme = README[`${state}, ${view}, ${theme}`];
      if (readme) {
        await mkdir(`${out}readme`, { recursive: true });
        await writeFile(`${out}readme/${readme}.png`, png);
      }
      const over = await app.page.evaluate(() => [
        document.documentElement.scrollWidth - innerWidth,
        document.documentElement.scrollHeight - innerHeight,
      ]);
      expect.soft(over, `${state}: px larger than the screen`).toEqual([0, 0]);
      expect.soft(await captionCovers(app.page), `${state}: under the caption`).toEqual([]);
    },
    /** tests/browser/out/sheet-NAME-VIEW-THEME-1.png and so on. */
    async lay(): Promise<void> {
      const [columns, most] = PER_SHEET[view];
      for (let from = 0; from < photos.length; from += most)
        await montage(
          `sheet-${name}-${view}-${theme}-${from / most + 1}`,
          photos.slice(from, from + most),
          columns,
        );
    },
  };
}
