import { expect } from 'vitest';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import type { Baker } from './baker.ts';
import { beginBread } from './begin-bread.ts';
import { back, keyed, press, to, turned, type PageStep } from './page-step.ts';
import { walkOn } from './walk-on.ts';

/** The wall's clock is set; the page runs on. */
const setClock = async (baker: Baker, by: number): Promise<void> => {
  const now = await baker.page.evaluate(() => Date.now());
  await baker.app.context.clock.setSystemTime(now + by);
  await baker.app.turn(3_000);
};

/** The last record says another stage than its facts lead to. */
const moveLastPlace = (baker: Baker, stage: string): Promise<void> =>
  baker.page.evaluate(async (to) => {
    const settled = <R>(request: IDBRequest<R>) =>
      new Promise<R>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const database = await settled(indexedDB.open('loafward'));
    const rows = database.transaction('log', 'readwrite').objectStore('log');
    const cursor = await settled(rows.openCursor(null, 'prev'));
    const record = cursor!.value as { position: { bakes: Record<string, { stage: string }> } };
    for (const bake of Object.values(record.position.bakes)) bake.stage = to;
    await settled(cursor!.update(record));
    database.close();
  }, stage);

/** What lies over the bench on the way of a bake: in this order, from the app's first screen on. */
export const BAKE_PAGES: readonly PageStep[] = [
  {
    name: 'the feed’s hour',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await beginBread(baker, 'Cherry and hazelnut', 'Feed now');
      await walkOn(baker, 'read-plan', 'levain-feed-1');
      await press(baker, ['Other time']);
    },
  },
  {
    name: 'a bake that was ended',
    async go(baker) {
      await press(baker, ['Back to the bench', 'More', 'End this bake']);
      await baker.noted(() => baker.hold());
      await baker.page.locator('.act-headline:has-text("this bake has ended")').waitFor();
    },
  },
  back('log, one bake', 1, 'Log'),
  {
    name: 'why this water',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await beginBread(baker, 'Cherry and hazelnut', 'Weighing comes next');
      await walkOn(baker, 'mix-weigh-1', 'mix-weigh-3');
      await press(baker, ['Why this?']);
    },
  },
  to('the wanted dough temperature', 'Change the wanted'),
  keyed('the wanted dough temperature, keyed in', '25'),
  {
    name: 'more, and what may be done ahead',
    async go(baker) {
      await press(baker, ['Back to the bench']);
      await walkOn(baker, 'mix-weigh-3', 'bulk-between-1');
      await press(baker, ['More']);
      await baker.page.locator('.ahead').waitFor();
    },
  },
  {
    name: 'the rise, read twice in a minute',
    async go(baker) {
      await press(baker, ['Back to the bench']);
      for (const percent of ['10', '25']) {
        await press(baker, ['New reading']);
        await baker.key(percent);
        await baker.noted(() => baker.tap('button:has-text("Dough rise"):has-text("%")'));
      }
      await press(baker, ['More', 'Show the rise']);
      await baker.page.locator('.rise-chart').waitFor();
    },
  },
  to('the rise as a table', 'As a table'),
  to('the rise in a jar', 'Rise in a jar'),
  {
    name: 'back after a while',
    async go(baker) {
      await press(baker, ['Back to the bench']);
      await baker.app.turn(30 * MINUTE);
      if ((await baker.page.locator('.call').count()) > 0) await baker.hush();
      await baker.page.locator('.return').waitFor();
    },
  },
  {
    name: 'what goes on the sheet',
    async go(baker) {
      await press(baker, ['I’ve read it']);
      await baker.slab();
      await walkOn(baker, 'bulk-between-2', 'bulk-scatter-1');
      await press(baker, ['Show the sheet']);
    },
  },
  {
    name: 'timers that run',
    async go(baker) {
      await press(baker, ['Back to the bench', 'More', 'Timer']);
      await baker.key('10');
      await baker.noted(() => baker.press('Nuts in the oven'));
      await turned(baker, '.timers-press');
    },
  },
  {
    name: 'a timer that is over',
    async go(baker) {
      await press(baker, ['Back to the bench']);
      await baker.app.turn(10 * MINUTE);
      await baker.page.locator('.sheet[data-tone="hot"]').waitFor();
    },
  },
  {
    name: 'the clock went ahead',
    async go(baker) {
      for (let n = 0; n < 2; n++) await baker.noted(() => baker.tap('.sheet .slab'));
      await baker.page.locator('.sheet').waitFor({ state: 'detached' });
      if ((await baker.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
      await setClock(baker, 13 * HOUR + 25 * MINUTE);
      await baker.page.locator('button:has-text("Clock went ahead")').waitFor();
    },
  },
  to('set, or asleep', 'Clock went ahead'),
  {
    name: 'the clock went back',
    async go(baker) {
      await press(baker, ['It was asleep']);
      await setClock(baker, -(3 * HOUR + 25 * MINUTE));
      await baker.page.locator('button:has-text("Clock went back")').waitFor();
    },
  },
  to('what a clock set back changes', 'Clock went back'),
  {
    name: 'start, a bake runs',
    async go(baker) {
      await press(baker, ['Close']);
      await baker.toStart();
    },
  },
  {
    name: 'beside another bake, what may be done ahead',
    async go(baker) {
      await beginBread(baker, 'Lane wheat', 'My dough is ready to divide');
      for (let n = 0; n < 2; n++) await baker.slab();
      await baker.page.locator('.tile:has-text("Do ahead")').waitFor();
    },
  },
  to('ahead of its call', 'Do ahead'),
  {
    name: 'told over the bench',
    async go(baker) {
      await press(baker, ['Back to the bench']);
      await moveLastPlace(baker, 'bulk.proving');
      await baker.app.reopen();
      // The call comes first.
      await baker.page.locator('.call').waitFor();
      expect(await baker.page.locator('.notice').count()).toBe(0);
    },
  },
  {
    name: 'told once the calls are hushed',
    async go(baker) {
      await baker.hush();
      await baker.hush();
      await baker.page.locator('.notice:has-text("is off")').waitFor();
    },
  },
  {
    name: 'where is the dough, after an update',
    async go(baker) {
      await moveLastPlace(baker, 'bulk.of-another-version');
      await baker.app.reopen();
      await baker.page.locator('.act-headline:has-text("Say where your dough is")').waitFor();
    },
  },
];
