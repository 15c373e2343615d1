import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';

it('takes the press of a finger that rolls up or down inside a control', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.begin();
  await baker.slab();
  await baker.slab();
  const cdp = await app.page.context().newCDPSession(app.page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...at: { x: number; y: number }[]) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at });
  const before = await app.countRows();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    for (const press of ['button:has-text("Take that back")', '.tile']) {
      const wanted = app.page.locator(press).first();
      await wanted.waitFor();
      await app.turn(1_200);
      const { x, y, width, height } = (await wanted.boundingBox())!;
      const [left, top] = [x + width / 2, y + height / 2];
      await baker.noted(async () => {
        await send('touchStart', { x: left, y: top - 20 });
        await send('touchMove', { x: left, y: top });
        await send('touchMove', { x: left, y: top + 20 });
        await send('touchEnd');
      });
    }
  }
  expect(await app.countRows()).toBe(before + 6);
});
