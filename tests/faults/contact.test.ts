import { it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { openApp, VIEWPORTS, type ViewportName } from '../browser/harness/open-app.ts';
import { WHOLE_BAKE } from '../browser/harness/whole-bake.ts';

/** Every state at three viewports in both themes, for eyes: tests/browser/out/state-*.png. */
it('photographs every state of a whole bake', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const shoot = async (name: string) => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      for (const theme of ['light', 'dark']) {
        await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
        await app.screenshot(`state-${view}-${theme}-${name}`);
      }
      const over = await app.page.evaluate(
        () => document.documentElement.scrollHeight - innerHeight,
      );
      if (over > 0) console.log(`${name} at ${view} is ${over} px taller than the screen`);
    }
    await app.page.evaluate(() => (document.documentElement.dataset['theme'] = 'light'));
    await app.setViewport('wide');
  };
  await app.page.locator('.start-grid').waitFor();
  await shoot('start');
  await baker.begin();
  const seen = new Set<string>();
  for (const { name, go } of WHOLE_BAKE) {
    const once = name.replace(/^load2/, 'load').replace(/^load1/, 'load');
    if (!seen.has(once)) await shoot(once);
    seen.add(once);
    if (['oven-on', 'load-lift', 'load-score'].includes(once)) {
      await baker.openGate();
      await shoot(`${once}-open`);
    }
    await go(baker, () => shoot(`${once}-rings`));
  }
  await shoot('done');
});
