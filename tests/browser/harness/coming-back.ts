import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { serve, type Served } from '../../../src/serve/serve.ts';
import { framesSince, openLeft, seen, type Seen } from './left-tab.ts';
import { DUE, lidAndRest, oneRests, type LeftKitchen } from './left-kitchen.ts';
import { START, VIEWPORTS, type ViewportName } from './open-app.ts';
import type { Tab } from './tab.ts';

const MINUTE = 60_000;
const VIEWS = Object.keys(VIEWPORTS) as ViewportName[];
/** Asleep, nothing of the page runs; only hidden, its timers do now and then. */
const AWAY = [
  { how: 'hidden', minutes: 47 },
  { how: 'asleep', minutes: 9 * 60 },
] as const;
/** Every way to be left. */
export const LEFT = VIEWS.flatMap((view) => AWAY.map((away) => ({ view, ...away })));

let server: Served;

const opened = async (left: LeftKitchen, view: ViewportName): Promise<Tab> => {
  const tab = await openLeft(server.url, left, view);
  await expect.poll(async () => (await seen(tab)).headline, { timeout: 30_000 }).not.toBe('');
  // Fonts, and what is loaded after the first paint, are there before it is left.
  await tab.evaluate('document.fonts.ready.then(() => new Promise((r) => setTimeout(r, 1000)))');
  return tab;
};

const leave = async (tab: Tab, { how, minutes }: (typeof AWAY)[number]): Promise<void> => {
  await tab.hide();
  await expect.poll(() => tab.evaluate('document.hidden')).toBe(true);
  if (how === 'asleep') await tab.freeze();
  await tab.evaluate(`ahead += ${minutes * MINUTE}`);
  await tab.show();
};

/** Minutes past, as the Bench writes them: "+22:05", "+8 h 35". */
const past = (text: string | null): number => {
  const [, hours, mins] = /\+(?:(\d+) h )?(\d+)/.exec(text ?? '') ?? [];
  return Number(hours ?? 0) * 60 + Number(mins ?? Number.NaN);
};

/** Minutes as the card tells them. */
const told = (all: number): string =>
  all < 60 ? `${all} min` : `${Math.floor(all / 60)} h ${String(all % 60).padStart(2, '0')}`;

/** Every control that stands before and after has kept its box. */
const expectStill = (before: Seen, after: Seen): void => {
  const both = Object.keys(before.boxes).filter((name) => name in after.boxes);
  expect(both).toEqual(expect.arrayContaining(['slab', 'Take that back', 'Say that again']));
  for (const name of both) expect.soft(after.boxes[name], name).toBe(before.boxes[name]);
};

/**
 * Nothing was touched since the page was opened: the first touch brings the sound, the second, past
 * the dead time, hushes; then the card stands for what happened.
 */
const hush = async (tab: Tab): Promise<Seen> => {
  await tab.tap('.bench-words');
  await tab.evaluate('new Promise((r) => setTimeout(r, 700))');
  expect((await seen(tab)).card).toEqual([]);
  await tab.tap('.bench-words');
  await expect.poll(async () => (await seen(tab)).card.length).toBe(3);
  return seen(tab);
};

/** Tests that a tablet which was left in these ways is right at once when somebody comes back. */
export function testComingBack(cases: typeof LEFT): void {
  beforeAll(async () => {
    server = await serve({ dir: inject('site') });
  });
  afterAll(() => server.close());
  describe.each(cases)('back after $minutes minutes $how, $view', ({ view, how, minutes }) => {
    const away = { how, minutes } as (typeof AWAY)[number];

    it('one bake: late, counted up, within half a second, and nothing has moved', async () => {
      const tab = await opened(oneRests(START), view);
      const before = await seen(tab);
      expect(before).toMatchObject({ headline: 'Let the dough rest', call: null });
      await leave(tab, away);
      const frames = await framesSince(tab);
      const right = (at: Seen): boolean =>
        at.call === 'act' && past(at.place ?? at.number) === minutes - DUE.salt;
      expect(frames.find(right)?.ms, JSON.stringify(frames[0])).toBeLessThan(500);
      expectStill(before, frames.at(-1)!);
      for (const frame of frames) expect(frame.boxes['slab']).toBe(before.boxes['slab']);
      const card = await hush(tab);
      expectStill(before, card);
      expect(card.card).toEqual([
        `Overdue by ${told(minutes - DUE.salt)}: Salt`,
        expect.stringMatching(/^Last done: First mix, \d\d:\d\d$/),
        expect.stringMatching(/^Now: /),
      ]);
      // It goes by nobody's doing but the baker's.
      await tab.evaluate(`ahead += ${10 * MINUTE}`);
      await expect
        .poll(async () => (await seen(tab)).card[0])
        .toBe(`Overdue by ${told(minutes - DUE.salt + 10)}: Salt`);
      await tab.evaluate('new Promise((r) => setTimeout(r, 700))');
      await tab.tap('.return .control');
      await expect.poll(async () => (await seen(tab)).card).toEqual([]);
      expectStill(before, await seen(tab));
      await tab.close();
    });

    it('two bakes: the lid first, the other beside it, both late', async () => {
      const tab = await opened(lidAndRest(START), view);
      const before = await seen(tab);
      expect(before.beside).toMatchObject([{ late: false }]);
      await leave(tab, away);
      const frames = await framesSince(tab);
      const right = (at: Seen): boolean =>
        at.call === 'hot' &&
        past(at.number) === minutes - DUE.lid &&
        at.beside.length === 1 &&
        at.beside[0]!.late &&
        past(at.beside[0]!.time) === minutes - DUE.salt;
      expect(frames.find(right)?.ms, JSON.stringify(frames[0])).toBeLessThan(500);
      expectStill(before, frames.at(-1)!);
      for (const frame of frames) expect(frame.boxes['slab']).toBe(before.boxes['slab']);
      await tab.close();
    });
  });
}
