import { expect, it, vi } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type ViewportName } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';

const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };

it('sets two pots, checks the sound, saves the log, and holds its measures on every page', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const measure = async (name: string) => {
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      await app.screenshot(`kitchen-${name}-${view}`);
      const found = await app.page.evaluate(() => ({
        over: document.documentElement.scrollHeight - innerHeight,
        wide: document.documentElement.scrollWidth - innerWidth,
        slabs: [...document.querySelectorAll('.slab')].filter((el) => el.checkVisibility()).length,
        sizes: [...document.querySelectorAll('.control, .tile, .key')].flatMap((el) => {
          if (!el.checkVisibility()) return [];
          const { width, height } = el.getBoundingClientRect();
          return [Math.min(width, height)];
        }),
      }));
      const at = `${name} at ${view}`;
      expect(found.over, `${at} is taller than the screen`).toBeLessThanOrEqual(0);
      expect(found.wide, `${at} is wider than the screen`).toBeLessThanOrEqual(0);
      expect(found.slabs, at).toBe(1);
      for (const px of found.sizes) expect(px * MM[view], at).toBeGreaterThanOrEqual(22);
    }
    await app.setViewport('wide');
    for (const theme of ['dark', 'light']) {
      await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      expect(await app.axe(), `axe: ${name}, ${theme}`).toEqual([]);
    }
  };
  await app.page.locator('.start-grid').waitFor();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await app.page.locator('.kitchen-grid').waitFor();
  await measure('grid');
  await baker.press('Pots and tins');
  await baker.tap('[aria-label="One more: Pots with a lid"]');
  await measure('places');
  await baker.press('What are the pots made of?');
  await baker.press('Pot 2');
  await baker.press('Made of');
  await baker.tap('.tile:has-text("Enamel")');
  await measure('material');
  await baker.tap('.slab');
  await measure('pot');
  for (let n = 0; n < 3; n++) await baker.tap('.slab');
  await baker.press('Oven');
  await measure('oven');
  await baker.press('Highest heat');
  await baker.key('235');
  await measure('heat');
  await baker.tap('.slab');
  await baker.tap('.slab');
  await baker.press('Fridge');
  await baker.press('How cold');
  await baker.key('6');
  await baker.tap('.slab');
  await measure('fridge');
  await baker.tap('.slab');
  await baker.press('Bowls');
  await measure('bowls');
  await baker.tap('.slab');
  await baker.press('Scale');
  await baker.tap('.tile:has-text("5 g")');
  await measure('scale');
  await baker.tap('.slab');
  await baker.press('This tablet');
  await measure('tablet');
  await baker.press('Night hours');
  await baker.press('Quiet from');
  await measure('from');
  await baker.press('23:00');
  await baker.tap('.slab');
  await measure('night');
  await baker.tap('.slab');
  await baker.press('Sound check');
  await measure('sound');
  await baker.press('Play the calls');
  await baker.tap('.tile:has-text("I heard them")');
  await measure('heard');
  await baker.tap('.slab');
  await baker.press('What a tablet cannot promise');
  await measure('promise');
  // All of it is in sight: nothing to read on.
  expect(await app.page.locator('.bench-further').count()).toBe(0);
  await baker.tap('.slab');
  await baker.press('Save as a file');
  const [file] = await Promise.all([app.page.waitForEvent('download'), baker.tap('.slab')]);
  expect(file.suggestedFilename()).toBe('loafward-log.jsonl');
  await vi.waitFor(async () => {
    const [kept] = (await app.storeRows('settings')).filter(
      (row): row is { pots: unknown[] } => typeof row === 'object' && row !== null && 'pots' in row,
    );
    expect(kept).toMatchObject({
      pots: [{ material: null }, { material: 'enamel' }],
      oven: { most: 235 },
      fridge: { celsius: 6 },
      scale: 5,
      sound: { heard: 'yes' },
      quiet: { from: 1380, to: 360 },
      savedAt: expect.any(Number),
    });
  });
  await app.reopen();
  await app.page.locator('.start-grid').waitFor();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await app.page.locator('.kitchen-grid :text("2 a load")').waitFor();
  await baker.tap('.slab');

  // During a bake: there and back from its bench.
  await baker.begin();
  const headline = await baker.headline();
  await baker.press('More');
  await baker.tap('.sheet button:has-text("Kitchen")');
  await app.page.locator('.kitchen-grid').waitFor();
  await measure('in-bake');
  await baker.tap('.slab:visible');
  await app.page.locator('.kitchen-grid').waitFor({ state: 'detached' });
  expect(await baker.headline()).toBe(headline);
  await baker.press('More');
  await baker.tap('.sheet button:has-text("Kitchen")');
  await baker.press('This tablet');
  await baker.press('Save as a file');
  const [whole] = await Promise.all([
    app.page.waitForEvent('download'),
    baker.tap('.slab:visible'),
  ]);

  // A fresh browser reads it: the same kitchen, the same bake.
  const other = await openApp();
  const hand = new Baker(other);
  await other.page.locator('.start-grid').waitFor();
  await hand.tap('.bench-controls .control:has-text("Kitchen")');
  await hand.press('This tablet');
  await hand.press('Read a saved file');
  await other.screenshot('kitchen-file-wide');
  await other.page.locator('input[type=file]').setInputFiles(await whole.path());
  await other.page.locator('.hold').waitFor();
  await other.screenshot('kitchen-file-read-wide');
  await hand.hold();
  await other.page.locator('.act-headline', { hasText: headline }).waitFor();
  const told = (rows: readonly unknown[]) => JSON.stringify(rows);
  expect(told(await other.storeRows())).toBe(told(await app.storeRows()));
  expectNoFaults(other.faults);
  expectNoFaults(app.faults);
});
