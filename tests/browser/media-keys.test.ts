import { expect, inject, it, onTestFinished } from 'vitest';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { serve } from '../../src/serve/serve.ts';
import { DUE, oneRests } from './harness/left-kitchen.ts';
import { putRows, putSetting } from './harness/put-rows.ts';
import { needBus, openBus, type PlayerKey } from './harness/session-bus.ts';
import { openTab, type Tab } from './harness/tab.ts';

const MINUTE = 60_000;
/** The salt is due so long after the page was made ready, real ms. */
const SOON = 8_000;
/** Two presses of one hand: longer than any dead time. */
const BEAT = { interval: 1_000 } as const;

/** What the page gave the browser, and what it plays; nothing of it is changed. */
const WATCH = `(() => {
  const given = (globalThis.given = new Map());
  const set = MediaSession.prototype.setActionHandler;
  MediaSession.prototype.setActionHandler = function (action, then) {
    set.call(this, action, then);
    given.set(action, then);
  };
  const play = HTMLMediaElement.prototype.play;
  HTMLMediaElement.prototype.play = function () {
    globalThis.played = this;
    return play.call(this);
  };
})()`;

const KEYS = { done: 'PlayPause', again: 'Next', hush: 'Previous' } as const satisfies Record<
  string,
  PlayerKey
>;
/** What a browser calls them while something plays. */
const ACTIONS = { PlayPause: 'pause', Next: 'nexttrack', Previous: 'previoustrack' } as const;

/** The built app with a salt that is due soon, its sound armed and the keys wanted. */
async function untilItRings(env: Readonly<Record<string, string>> = {}): Promise<Tab> {
  const server = await serve({ dir: inject('site') });
  onTestFinished(() => server.close());
  const tab = await openTab(server.url, WATCH, { env });
  const text = (selector: string) =>
    tab.evaluate(`document.querySelector('${selector}')?.textContent ?? ''`);
  await expect.poll(() => text('.act-headline')).not.toBe('');
  const waited = oneRests(0).at + DUE.salt * MINUTE;
  await tab.evaluate(putRows(oneRests(Date.now() + SOON - waited).records));
  await tab.evaluate(putSetting('equipment', { ...EQUIPMENT, mediaKeys: true }));
  await tab.tell('Page.reload');
  await expect.poll(() => text('.ear')).toContain('Tap to arm sound');
  expect(await tab.evaluate('[given.size, globalThis.played === undefined]')).toEqual([0, true]);
  await expect
    .poll(async () => {
      if (String(await text('.ear')).includes('Sound is on')) return true;
      await tab.tap('.ear');
      return false;
    }, BEAT)
    .toBe(true);
  await expect.poll(() => text('.call')).toContain('It’s time');
  return tab;
}

const factsIn = async (tab: Tab): Promise<LogRecord['fact'][]> =>
  (await tab.evaluate(`new Promise((then, no) => {
    const asked = indexedDB.open('loafward');
    asked.onerror = no;
    asked.onsuccess = () => {
      const rows = asked.result.transaction('log').objectStore('log').getAll();
      rows.onsuccess = () => { asked.result.close(); then(rows.result.map(({ fact }) => fact)); };
      rows.onerror = no;
    };
  })`)) as LogRecord['fact'][];

/** The four keys are taken, and a player plays on in silence, long enough for a browser to route them. */
async function expectClaimed(tab: Tab): Promise<void> {
  const actions = `[...given].filter(([, then]) => then !== null).map(([action]) => action).sort()`;
  const claimed = ['nexttrack', 'pause', 'play', 'previoustrack'];
  await expect.poll(() => tab.evaluate(actions)).toEqual(claimed);
  const player = 'played && [played.paused, played.loop, played.muted, played.duration]';
  await expect.poll(() => tab.evaluate(player)).toEqual([false, true, false, 6]);
  expect(await tab.evaluate('navigator.mediaSession.playbackState')).toBe('playing');
  const at = Number(await tab.evaluate('played.currentTime'));
  await expect.poll(() => tab.evaluate('played.currentTime')).not.toBe(at);
}

/** The first key hushes; then play presses the slab once, next says it again and back falls silent. */
async function walkByKeys(tab: Tab, press: (key: PlayerKey) => Promise<unknown>): Promise<void> {
  const before = (await factsIn(tab)).length;
  const since = async () => (await factsIn(tab)).slice(before);
  const caption = () => tab.evaluate(`document.querySelector('.caption')?.textContent ?? ''`);
  const pressUntil = (key: PlayerKey, done: () => Promise<boolean>) =>
    expect
      .poll(async () => (await done()) || (await press(key), false), { ...BEAT, timeout: 20_000 })
      .toBe(true);
  await pressUntil(KEYS.done, async () => (await since()).length > 0);
  expect(await since()).toMatchObject([{ kind: 'heard' }]);
  await pressUntil(KEYS.again, async () => /grams of salt/.test(String(await caption())));
  await pressUntil(KEYS.hush, async () => (await caption()) === '');
  expect(await since()).toHaveLength(1);
  await pressUntil(KEYS.done, async () => (await since()).length > 1);
  expect((await since()).slice(1)).toMatchObject([{ kind: 'press', item: 'salt' }]);
}

it('a desktop’s media keys come through the browser to the slab', async (context) => {
  needBus(context);
  const bus = await openBus();
  const tab = await untilItRings(bus.env);
  await expectClaimed(tab);
  await expect.poll(() => bus.playback()).toBe('Playing');
  await walkByKeys(tab, (key) => bus.press(key));
});

it('what the page gave the browser for these keys does the same', async () => {
  const tab = await untilItRings();
  await expectClaimed(tab);
  await walkByKeys(tab, (key) =>
    tab.evaluate(`given.get('${ACTIONS[key]}')({ action: '${ACTIONS[key]}' })`),
  );
});
