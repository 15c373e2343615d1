import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { openApp } from '../browser/harness/open-app.ts';
import { WHOLE_BAKE } from '../browser/harness/whole-bake.ts';
import { contact } from './support/contact.ts';
import { SLICES } from './support/slices.ts';

/** Every state of a whole bake, for eyes: tests/browser/out/sheet-bake-*.png. */
it.each(SLICES)('photographs a whole bake: %s', async (_, slice) => {
  const app = await openApp({ viewport: slice.view });
  const baker = new Baker(app);
  const { shoot, lay } = contact(app, 'bake', slice);
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
    if (name === 'bulk-scatter-1') {
      await baker.press('Show the sheet');
      await app.page.locator('.sheet-cells').waitFor();
      await shoot('sheet');
      await baker.press('Back to the bench');
    }
    await go(baker, isNew ? () => shoot(`${once}-rings`) : undefined);
  }
  await shoot('done');
  await lay();
  expect(seen.size).toBeGreaterThan(50);
  expectNoFaults(app.faults);
  await app.close();
});
