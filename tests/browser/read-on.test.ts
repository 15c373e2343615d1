import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { beginBread } from './harness/begin-bread.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openParts } from './harness/open-parts.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { press } from './harness/page-step.ts';
import { settled } from './harness/settled.ts';

/** The presses that stand whole on the upper sheet now, and all there are. */
const seen = (app: App) =>
  app.page.evaluate(() => {
    const sheet = [...document.querySelectorAll('.sheet')].at(-1)!;
    const presses = [...sheet.querySelectorAll<HTMLElement>('.sheet-inner button')];
    const whole = presses.filter((el) => {
      const { left, right, top, bottom } = el.getBoundingClientRect();
      const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return top >= -1 && bottom <= innerHeight + 1 && el.contains(hit);
    });
    const names = (of: readonly HTMLElement[]) => of.map((el) => el.innerText);
    return { whole: names(whole), all: names(presses), top: sheet.scrollTop };
  });

/** Bigger words are read on more often; plain ones too in `npm run faults`. */
const TEXTS = inject('everyTablet') ? ['plain', 'bigger'] : ['bigger'];

it('brings every press of a long sheet whole into sight by Read on, in words of either size', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl');
  let long = 0;
  for (const [open, back] of [
    ['More', 'Back to the bench'],
    ['New reading', 'Back to the bench'],
  ] as const) {
    await press(baker, [open]);
    if (open === 'New reading') await baker.key('24');
    for (const view of Object.keys(VIEWPORTS) as ViewportName[])
      for (const text of TEXTS) {
        await app.setViewport(view);
        await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
        await app.turn(700);
        await settled(app.page);
        const found = new Set<string>();
        const further = app.page.locator('.sheet-further button');
        for (let n = 0, top = -1; n < 12; n += 1) {
          const now = await seen(app);
          for (const name of now.whole) found.add(name);
          if ((await further.count()) === 0 || now.top <= top) break;
          top = now.top;
          long += 1;
          await baker.tap('.sheet-further button');
          await settled(app.page);
        }
        const { all } = await seen(app);
        expect.soft([...found].toSorted(), `${open}, ${view}, ${text}`).toEqual(all.toSorted());
      }
    await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'plain'));
    await app.setViewport('wide');
    await press(baker, [back]);
  }
  expect(long).toBeGreaterThan(6);
  expectNoFaults(app.faults);
});

/** Rows of a table or a tape that stand in part, and those that stand whole; how far was read. One of half a box is seen in part. */
const rowsSeen = (page: Page) =>
  page.evaluate(() => {
    const box = document.querySelector<HTMLElement>('.bench-words')!;
    const inner = box.querySelector('.bench-inner')!;
    const [{ top, bottom }, all] = [box.getBoundingClientRect(), inner.getBoundingClientRect()];
    const clip = /^inset\((\S+)px \S+ (\S+)px\)$/.exec(getComputedStyle(inner).clipPath);
    const from = clip ? Math.max(top, all.top + Number(clip[1])) : top;
    const to = clip ? Math.min(bottom, all.bottom - Number(clip[2])) : bottom;
    const rows = [...inner.querySelectorAll<HTMLElement>('tr, .tape-row')].filter(
      (row) => row.offsetHeight < (bottom - top) / 2 - 2,
    );
    const shown = rows.filter((row) => getComputedStyle(row).opacity !== '0');
    const of = (is: (box: DOMRect) => boolean) =>
      shown.filter((row) => is(row.getBoundingClientRect())).map((row) => row.innerText);
    return {
      halved: of((row) => [from, to].some((edge) => row.top < edge - 3 && row.bottom > edge + 3)),
      whole: of((row) => row.top >= from - 3 && row.bottom <= to + 3),
      all: rows.map((row) => row.innerText),
      top: box.scrollTop,
    };
  });

it.each(['day-table', 'day-big'])(
  'cuts no row of a table or a tape in two, and brings each whole: %s',
  async (scene) => {
    const { page, show, turn } = await openParts();
    let long = 0;
    for (const view of Object.keys(VIEWPORTS) as ViewportName[])
      for (const text of TEXTS) {
        await show(scene, view, `text=${text}`);
        await settled(page);
        const found = new Set<string>();
        for (let n = 0, top = -1; n < 20; n += 1) {
          const now = await rowsSeen(page);
          expect.soft(now.halved, `${view}, ${text}, ${now.top}`).toEqual([]);
          for (const row of now.whole) found.add(row);
          if (now.top <= top) break;
          top = now.top;
          const further = page.locator('.bench-further button');
          if ((await further.count()) === 0) break;
          long += 1;
          await turn(700);
          await further.tap();
          await settled(page);
        }
        const { all } = await rowsSeen(page);
        expect
          .soft([...found].toSorted(), `${view}, ${text}`)
          .toEqual([...new Set(all)].toSorted());
      }
    expect(long).toBeGreaterThan(4);
  },
  60_000,
);
