import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { montage, type Photo } from '../browser/harness/montage.ts';
import { openApp, VIEWPORTS, type ViewportName } from '../browser/harness/open-app.ts';
import { WHOLE_BAKE } from '../browser/harness/whole-bake.ts';

/** Every state at three viewports in both themes, for eyes: tests/browser/out/sheet-*.png. */
it('photographs every state of a whole bake on a few sheets', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const sheets = new Map<string, Photo[]>();
  const shoot = async (name: string) => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      for (const theme of ['light', 'dark']) {
        await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
        const sheet = `sheet-${view}-${theme}`;
        const photo = { name, png: await app.page.screenshot() };
        sheets.set(sheet, [...(sheets.get(sheet) ?? []), photo]);
      }
      const over = await app.page.evaluate(
        () => document.documentElement.scrollHeight - innerHeight,
      );
      expect.soft(over, `${name} at ${view}: px taller than the screen`).toBeLessThanOrEqual(0);
    }
    await app.page.evaluate(() => (document.documentElement.dataset['theme'] = 'light'));
    await app.setViewport('wide');
  };
  await app.page.locator('.start-grid').waitFor();
  await shoot('start');
  await baker.begin();
  const seen = new Set<string>();
  for (const { name, go } of WHOLE_BAKE) {
    // Lists look alike from line to line, and so do both loads.
    const once = name.replace(/^load[12]/, 'load').replace(/^(read-list|.*-before)-[2-9]$/, '$1-1');
    const isNew = !seen.has(once);
    if (isNew) await shoot(once);
    seen.add(once);
    if (isNew && (await app.page.locator('.hold').count()) > 0) {
      await baker.openGate();
      await shoot(`${once}-open`);
    }
    if (name === 'mix-temperature') {
      await baker.tap('.slab');
      await app.page.locator('.pad').waitFor();
      await shoot('keypad');
      await baker.press('Back to the bench');
    }
    await go(baker, isNew ? () => shoot(`${once}-rings`) : undefined);
  }
  await shoot('done');
  expect(sheets.size).toBe(6);
  for (const [name, photos] of sheets) await montage(name, photos, name.includes('tall') ? 9 : 6);
});
