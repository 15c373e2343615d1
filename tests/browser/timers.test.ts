import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';

/** A slab by millimetres of the screen it stands on, as the app itself reckons them. */
const slab = (baker: Baker) =>
  baker.page.locator('.sheet .slab').evaluate((el) => {
    const mm = parseFloat(getComputedStyle(el).getPropertyValue('--px-per-mm'));
    const { width, height, left, top, right, bottom } = el.getBoundingClientRect();
    const inside = left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight;
    return { width: width / mm, height: height / mm, inside };
  });

it.each(tabletsNow())(
  'a timer at %s is set, outlives a reload, is heard, stopped and taken back',
  async (viewport) => {
    const app = await openApp({ viewport });
    const baker = new Baker(app);
    await baker.begin();
    await baker.press('More');
    await baker.tap('.sheet button:has(.control-label:text-is("Timer"))');
    await app.turn(500);
    await baker.key('10');
    await app.turn(500);
    await app.screenshot(`timer-minutes-${viewport}`);
    const beyond = await app.page.evaluate(() => {
      const sheet = document.querySelector('.sheet')!;
      return [sheet.scrollHeight - sheet.clientHeight, sheet.scrollWidth - sheet.clientWidth];
    });
    expect.soft(beyond).toEqual([0, 0]);
    await baker.noted(() => baker.press('Nuts in the oven'));
    const shown = () => app.page.locator('.timers-press').innerText();
    await app.page.locator('.timers-press').waitFor();
    expect(await shown()).toContain('17:40');
    await app.turn(1_000);
    await app.screenshot(`timer-runs-${viewport}`);
    expect.soft(await app.axe()).toEqual([]);

    await app.reopen();
    await app.page.locator('.timers-press').waitFor();
    expect(await shown()).toContain('17:40');

    await app.turn(10 * 60_000);
    const over = app.page.locator('.sheet[data-tone="hot"]');
    await over.waitFor();
    await app.turn(500);
    await app.screenshot(`timer-over-${viewport}`);
    expect(await over.innerText()).toContain('Nuts in the oven: time');
    const size = await slab(baker);
    expect.soft(size.inside).toBe(true);
    expect.soft(size.width).toBeGreaterThanOrEqual(60);
    expect.soft(size.height).toBeGreaterThanOrEqual(40);
    expect.soft(await app.axe()).toEqual([]);

    // The first touch hushes and does nothing else.
    await baker.noted(() => baker.tap('.sheet .slab'));
    expect(await over.count()).toBe(1);
    await baker.noted(() => baker.tap('.sheet .slab'));
    await over.waitFor({ state: 'detached' });
    await baker.takeBack();
    await over.waitFor();
    const kinds = (await baker.facts()).map(({ kind }) => kind);
    expect(kinds.slice(-4)).toEqual(['timer', 'heard', 'timerOff', 'takeBack']);
    expectNoFaults(app.faults);
  },
);
