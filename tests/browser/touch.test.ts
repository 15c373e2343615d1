import type { CDPSession } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { openApp, type App, type ViewportName } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Touch as a tablet sends it: contacts down, moved, lifted. */
class Glass {
  private constructor(
    private readonly app: App,
    private readonly cdp: CDPSession,
  ) {}

  static async over(app: App): Promise<Glass> {
    return new Glass(app, await app.page.context().newCDPSession(app.page));
  }

  private send(type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) {
    const touchPoints = points.map((point, id) => ({ ...point, id, radiusX: 60, radiusY: 60 }));
    return this.cdp.send('Input.dispatchTouchEvent', { type, touchPoints });
  }

  async tap(...points: Point[]): Promise<void> {
    await this.send('touchStart', points);
    await this.send('touchEnd', []);
  }

  async slide(from: Point, to: Point): Promise<void> {
    await this.send('touchStart', [from]);
    await this.send('touchMove', [to]);
    await this.send('touchEnd', []);
  }

  async hold(at: Point, ms: number): Promise<void> {
    await this.send('touchStart', [at]);
    await this.app.turn(ms);
    await this.send('touchEnd', []);
    await this.app.turn(50);
  }
}

const middle = async (app: App, selector: string): Promise<Point> => {
  const box = await app.page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`Nothing there: ${selector}.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** The facts in the store once they no longer change: a press is written before it is shown. */
const settled = async (app: App): Promise<number> => {
  for (let before = -1; ;) {
    await app.turn(60);
    const now = await app.countRows();
    if (now === before) return now;
    before = now;
  }
};

/** At the list before the start: every tap on the slab answers one line, and the next one is there. */
const atTheList = async (viewport: ViewportName) => {
  const app = await openApp({ viewport });
  const baker = new Baker(app);
  await baker.begin();
  await baker.slab();
  await app.turn(1_100);
  return { app, baker, glass: await Glass.over(app), slab: await middle(app, '.slab') };
};

describe.each(tabletsNow())('touch on the Bench, %s', (viewport) => {
  it('is taken once, late enough, where it was meant, and can be taken back', async () => {
    const { app, baker, glass, slab } = await atTheList(viewport);
    const before = await settled(app);
    await app.turn(1_100);

    // Taps at 0, 150, 400 and 590 ms are one press; one at 1,100 ms is another.
    await glass.tap(slab);
    for (const ms of [150, 250, 190]) {
      await app.turn(ms);
      await glass.tap(slab);
    }
    expect((await settled(app)) - before).toBe(1);
    // The next line counts as new from when it is shown, and it is shown once it is written.
    await app.turn(1_100);
    await glass.tap(slab);
    expect((await settled(app)) - before).toBe(2);
    await app.turn(1_100);
    await glass.tap(slab);
    expect((await settled(app)) - before).toBe(3);

    // Sliding off cancels, and three fingers spread over the screen are a wet cloth.
    await app.turn(1_100);
    await glass.slide(slab, { x: 5, y: 5 });
    await app.turn(1_100);
    const { width, height } = app.page.viewportSize()!;
    await glass.tap(slab, { x: 10, y: height - 10 }, { x: width / 2, y: 10 });
    expect((await settled(app)) - before).toBe(3);

    // A press of ten minutes ago is taken back.
    await app.turn(1_100);
    const asked = await baker.headline();
    await baker.slab();
    expect(await baker.headline()).not.toBe(asked);
    await app.turn(10 * 60_000);
    if ((await app.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
    await baker.takeBack();
    expect(await baker.headline()).toBe(asked);
  });

  it('does nothing to a control that is new for 400 ms, and then does', async () => {
    const { app, baker, glass } = await atTheList(viewport);
    await baker.press('More');
    await app.page.locator('button:has-text("Wipe")').first().waitFor();
    const wipe = await middle(app, 'button:has-text("Wipe")');
    await app.turn(380);
    await glass.tap(wipe);
    await app.turn(20);
    expect(await app.page.locator('.wipe').count()).toBe(0);
    await app.turn(700);
    await glass.tap(wipe);
    await app.page.locator('.wipe').first().waitFor();
  });

  it('opens a gate after 1,300 ms of holding and not after 1,000', async () => {
    const app = await openApp({ viewport });
    const baker = new Baker(app);
    await baker.page.locator('.start-grid').waitFor();
    await baker.press('Where is your dough?');
    await baker.press('My loaves are ready to bake');
    await baker.begin();
    const glass = await Glass.over(app);
    await app.turn(1_100);
    await glass.hold(await middle(app, '.hold'), 1_000);
    expect(await app.page.locator('.hold').count()).toBe(1);
    await app.turn(1_100);
    await glass.hold(await middle(app, '.hold'), 1_300);
    expect(await app.page.locator('.hold').count()).toBe(0);
  });
});
