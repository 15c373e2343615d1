import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serve, type Served } from '../../src/serve/serve.ts';
import { sharedBrowser } from './harness/chromium.ts';
import { hear, HEAR_SCRIPT, heard, stall, stretches, type Moment } from './harness/hear.ts';
import { openSoundSite, type SoundSite } from './harness/sound-site.ts';
import { openTab, type Tab } from './harness/tab.ts';

const KINDS = ['look', 'act', 'hot'] as const;
type Kind = (typeof KINDS)[number];

let site: SoundSite;
let server: Served;

beforeAll(async () => {
  site = await openSoundSite();
  server = site.server;
});
afterAll(() => site.close());

const stateOf = (tab: Tab) => tab.evaluate('document.querySelector("button")?.textContent');

async function openLocked(): Promise<Tab> {
  const tab = await openTab(server.url, HEAR_SCRIPT);
  await expect.poll(() => stateOf(tab)).toBe('locked');
  return tab;
}

/** A page that has been tapped, and whose sound is being measured. */
async function openArmed(): Promise<Tab> {
  const tab = await openLocked();
  await tab.tap('button');
  await expect.poll(() => stateOf(tab)).toBe('armed');
  await expect.poll(async () => (await heard(tab)).length).toBeGreaterThan(20);
  return tab;
}

/** Rings `inMs` from now (or since, below 0); the real instant from which it should be heard. */
async function ring(tab: Tab, kind: Kind, inMs: number): Promise<number> {
  const due = `Date.now() + ${Math.max(0, inMs)}`;
  return Number(await tab.evaluate(`[${due}, (stop = sound.ring('${kind}', ${inMs}))][0]`));
}
/** Silences it; the instant of asking. */
const hush = async (tab: Tab) => Number(await tab.evaluate('(stop(), Date.now())'));

/** What was heard between two real instants, once it has been measured. */
async function heardUntil(tab: Tab, from: number, until: number): Promise<Moment[]> {
  await expect.poll(async () => (await heard(tab)).at(-1)?.wall).toBeGreaterThan(until);
  return (await heard(tab)).filter(({ wall }) => wall > from && wall <= until);
}

/** Silences the tab and waits until it has been silent for a while, so that the next test hears only its own. */
async function settle(tab: Tab): Promise<void> {
  const hushed = await hush(tab);
  await heardUntil(tab, hushed, hushed + 600);
}

test('calls are locked in a page that nobody touched; the first tap lets a waiting one sound', async () => {
  const tab = await openLocked();
  await ring(tab, 'act', -20_000);
  expect(await tab.evaluate('sound.arm()')).toBe('locked'); // no tap: the browser must not allow it
  expect(await stateOf(tab)).toBe('locked');
  expect(stretches(await heard(tab))).toEqual([]);
  const tapped = Date.now();
  await tab.tap('button');
  const [first] = stretches(await heardUntil(tab, 0, tapped + 1_500));
  expect(first?.from).toBeGreaterThanOrEqual(tapped);
  expect(first?.from).toBeLessThan(tapped + 1_000);
  expect(await stateOf(tab)).toBe('armed');
  await tab.close();
});

describe('calls in a page that was tapped', () => {
  let opened: Promise<Tab> | null = null;
  /** One page for them all: each leaves it silent. */
  const theTab = () => (opened ??= openArmed());

  test.each([
    ['look', [0, 625, 1_250]],
    ['act', [0, 303, 606, 909]],
    ['hot', [0, 154, 308, 462, 615, 769]],
  ] as const)('%s begins within 60 ms of its instant, in its rhythm', async (kind, beats) => {
    const tab = await theTab();
    const due = await ring(tab, kind, 1_000);
    const moments = await heardUntil(tab, due - 800, due + 1_900);
    const starts = stretches(moments).map(({ from }) => from - due);
    const late = stall(moments, due - 500, due + starts[0]! + 10);
    expect(Math.abs(starts[0]!)).toBeLessThanOrEqual(60 + late);
    const uneven = stall(moments, due, due + 1_900);
    expect(starts).toHaveLength(beats.length);
    beats.forEach((beat, i) => {
      expect(Math.abs(starts[i]! - starts[0]! - beat)).toBeLessThanOrEqual(40 + uneven);
    });
    await settle(tab);
  });

  test.each(KINDS)('%s ends within 200 ms of the hush', async (kind) => {
    const tab = await theTab();
    const due = await ring(tab, kind, 0);
    await heardUntil(tab, due, due + 80);
    const hushed = await hush(tab);
    const moments = await heardUntil(tab, due - 100, hushed + 1_500);
    const last = stretches(moments).at(-1)!;
    const behind = stall(moments, hushed - 100, hushed + 300);
    expect(last.until).toBeGreaterThan(due);
    expect(last.until - hushed).toBeLessThanOrEqual(200 + behind);
  });

  test('a call grows louder by 6 dB and 6 dB while nobody comes', async () => {
    const tab = await theTab();
    const peaks: number[] = [];
    for (const inMs of [0, -20_000, -50_000]) {
      const due = await ring(tab, 'look', inMs);
      peaks.push(Math.max(...(await heardUntil(tab, due, due + 300)).map(({ rms }) => rms)));
      await settle(tab);
    }
    const db = peaks.map((peak) => 20 * Math.log10(peak / peaks[2]!));
    expect(db[0]).toBeCloseTo(-12, 0);
    expect(db[1]).toBeCloseTo(-6, 0);
  });

  test('calls sound on time in a hidden page', async () => {
    const tab = await theTab();
    const due = await ring(tab, 'hot', 5_000);
    await tab.hide();
    await expect.poll(() => tab.evaluate('document.hidden')).toBe(true);
    expect(Date.now()).toBeLessThan(due - 1_000);
    const moments = await heardUntil(tab, due - 1_000, due + 7_500);
    const tones = stretches(moments, { gap: 500 });
    expect(tones).toHaveLength(3);
    tones.forEach(({ from }, i) => {
      const on = due + i * 3_000;
      // Hidden timers run once a second; how late the tone was heard is known with its first moment.
      const late = stall(moments, on - 1_500, Math.max(on, from + 10));
      expect(Math.abs(from - on)).toBeLessThanOrEqual(60 + late);
    });
    expect(moments.every(({ hidden }) => hidden)).toBe(true);
    await tab.show();
    await expect.poll(() => tab.evaluate('document.hidden')).toBe(false);
    const hushed = await hush(tab);
    const after = await heardUntil(tab, hushed + 200, hushed + 4_000);
    expect(stretches(after)).toEqual([]);
  });
});

describe('the ear of the tests', () => {
  test('hears a page of playwright too', async () => {
    const context = await (await sharedBrowser()).newContext();
    await hear(context);
    const page = await context.newPage();
    await page.goto(server.url);
    await page.click('button');
    await expect.poll(async () => (await heard(page)).length).toBeGreaterThan(20);
    await page.evaluate(`void sound.ring('hot', 0)`);
    await expect.poll(async () => stretches(await heard(page)).length).toBeGreaterThan(0);
    await context.close();
  });

  test('says that it is deaf where the worklet is not served, or nothing was put in the page', async () => {
    const bare = await serve({ dir: site.dir });
    const deaf = await openTab(bare.url, HEAR_SCRIPT);
    await expect.poll(() => stateOf(deaf)).toBe('locked');
    await deaf.tap('button');
    await expect.poll(() => heard(deaf).catch(String)).toMatch(/cannot be heard: .*worklet/);
    await deaf.close();
    const nothing = await openTab(bare.url);
    await expect.poll(() => stateOf(nothing)).toBe('locked');
    await expect(heard(nothing)).rejects.toThrow('cannot be heard: no HEAR_SCRIPT ran in it.');
    await nothing.close();
    await bare.close();
  });
});
