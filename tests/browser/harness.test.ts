import { describe, expect, test } from 'vitest';
import { makePage } from '../../src/serve/site.ts';
import { serve } from '../../src/serve/serve.ts';
import { folder } from '../serve/folder.ts';
import { again, bounded } from './harness/bounded.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, START } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

/** A page of our own in place of the app, so that the harness is tried on known ground. */
async function openPage(script: string, body = '<main><h1>Dough</h1></main>') {
  const dir = await folder({
    'index.html':
      '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Dough</title>' +
      `<script type="module" src="/page.js"></script></head><body>${body}</body></html>`,
    'page.js': script,
    'icons/loafward.svg': makePage('a.svg', Buffer.from('<svg/>')).body,
    'favicon.ico': '',
  });
  const server = await serve({ dir });
  const app = await openApp({ server });
  return { app, server };
}

describe('faults', () => {
  test.each([
    ['console', `console.error('the pot is empty')`, /the pot is empty/],
    ['page', `throw new Error('the oven is cold')`, /the oven is cold/],
    ['page', `Promise.reject(new Error('nobody listens'))`, /nobody listens/],
    ['policy', `document.body.setAttribute('style', 'color: red')`, /^style-src-attr blocked/],
    ['policy', `document.body.append(document.createElement('style'))`, /^style-src-elem blocked/],
    ['policy', `try { eval('1') } catch {}`, /^script-src blocked eval/],
    ['policy', `fetch('https://elsewhere.example/').catch(() => 0)`, /^connect-src blocked/],
    ['offOrigin', `location.assign('http://elsewhere.example/far')`, /elsewhere\.example\/far/],
  ] as const)('%s: %s', async (kind, script, found) => {
    const { app, server } = await openPage(script);
    await expect.poll(() => app.faults[kind].join('\n')).toMatch(found);
    expect(() => expectNoFaults(app.faults)).toThrow();
    await app.close();
    await server.close();
  });

  test('styles set by a script through the style object are let through', async () => {
    const { app, server } = await openPage(`document.body.style.setProperty('color', 'red')`);
    await expect
      .poll(() => app.page.evaluate(() => getComputedStyle(document.body).color))
      .toBe('rgb(255, 0, 0)');
    expectNoFaults(app.faults);
    await app.close();
    await server.close();
  });
});

describe('the clock', () => {
  const TICKING = `
    window.ticks = 0; window.first = Date.now();
    setInterval(() => window.ticks++, 1000);
    setTimeout(() => { window.rung = Date.now() }, 47 * 60_000);`;
  interface Ticking {
    ticks: number;
    first: number;
    rung?: number;
  }

  test('stands at the start until turned; a leap fires what is due, once', async () => {
    const { app, server } = await openPage(TICKING);
    const read = () =>
      app.page.evaluate(() => {
        const { ticks, first, rung } = globalThis as unknown as Ticking;
        return { ticks, first, now: Date.now(), rung: rung ?? null };
      });
    await expect.poll(async () => (await read()).first).toBe(START);
    expect(await read()).toEqual({ ticks: 0, first: START, now: START, rung: null });
    await app.turn(1_000);
    expect(await read()).toMatchObject({ ticks: 1, now: START + 1_000 });
    await app.turn(46 * 60_000);
    expect(await read()).toMatchObject({ now: START + 46 * 60_000 + 1_000, rung: null });
    await app.turn(59_000);
    expect(await read()).toMatchObject({ now: START + 47 * 60_000, rung: START + 47 * 60_000 });
    expect((await read()).ticks).toBeLessThan(10);
    await app.close();
    await server.close();
  });

  test('goes on from where it stood in a reopened page', async () => {
    const { app, server } = await openPage(TICKING);
    await app.turn(90_000);
    await app.reopen();
    await expect
      .poll(() => app.page.evaluate(() => (globalThis as unknown as Ticking).first))
      .toBe(START + 90_000);
    await app.close();
    await server.close();
  });
});

test('rows of the store come in key order, and none where there is no store', async () => {
  const { app, server } = await openPage('');
  expect(await app.storeRows()).toEqual([]);
  expect(await app.page.evaluate(() => indexedDB.databases())).toEqual([]);
  await app.page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('loafward', 1);
        asked.onupgradeneeded = () => {
          const log = asked.result.createObjectStore('log');
          for (const seq of [10, 2, 1]) log.add({ seq }, seq);
        };
        asked.onsuccess = () => resolve(asked.result.close());
        asked.onerror = () => reject(asked.error ?? new Error('no reason given'));
      }),
  );
  expect(await app.storeRows()).toEqual([{ seq: 1 }, { seq: 2 }, { seq: 10 }]);
  expect(await app.storeRows('settings')).toEqual([]);
  await app.close();
  await server.close();
});

test('axe finds what is wrong under the content policy and a standing clock', async () => {
  const bad = await openPage('', '<main><h1>Dough</h1><img src="/icons/loafward.svg"></main>');
  const found = await bad.app.axe();
  expect(found.map(({ rule }) => rule)).toContain('image-alt');
  expect(found.find(({ rule }) => rule === 'image-alt')?.elements).toEqual(['img']);
  expectNoFaults(bad.app.faults);
  await bad.app.close();
  await bad.server.close();

  const good = await openPage('');
  expect(await good.app.axe()).toEqual([]);
  await good.app.close();
  await good.server.close();
});

test('offline opens the app again without the network', async () => {
  const app = await openApp({ offline: true });
  await expect.poll(() => app.page.locator('#loafward > :not(.shell)').count()).toBeGreaterThan(0);
  expect(await app.page.evaluate(() => fetch('/gone.txt').then(String, () => 'no network'))).toBe(
    'no network',
  );
  await app.setViewport('tall');
  expect(await app.page.evaluate(() => [innerWidth, innerHeight])).toEqual([820, 1180]);
});

describe('waiting', () => {
  test('what never answers is a failure that says what it was', async () => {
    await expect(bounded('the oven', new Promise(() => 0), 20)).rejects.toThrow(
      'No answer in 0.02 s: the oven',
    );
    await expect(bounded('the oven', Promise.resolve(230), 20)).resolves.toBe(230);
  });

  test('what may be asked again is asked once more', async () => {
    let asked = 0;
    const failing = (times: number) => () =>
      asked++ < times ? Promise.reject(new Error('no answer')) : Promise.resolve('here');
    await expect(again('a page', failing(1))).resolves.toBe('here');
    asked = 0;
    await expect(again('a page', failing(2))).rejects.toThrow('no answer');
  });

  test('a page is settled when what it lays out after a frame is laid out', async () => {
    const { app, server } = await openPage(`
      new ResizeObserver(() => (document.title = innerWidth)).observe(document.body);`);
    await app.setViewport('tall');
    await settled(app.page);
    expect(await app.page.title()).toBe('820');
    await app.close();
    await server.close();
  });
});
