import { expect, inject, it, onTestFinished } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import {
  HEAR_APART_SCRIPT,
  HEAR_FILES,
  heardApart,
  stretches,
  type Stretch,
} from '../browser/harness/hear.ts';
import { DUE, lidAndRest } from '../browser/harness/left-kitchen.ts';
import { openLeft, seen } from '../browser/harness/left-tab.ts';
import { START } from '../browser/harness/open-app.ts';
import type { Tab } from '../browser/harness/tab.ts';

const MINUTE = 60_000;
/** A hot call that comes late sounds at once and then so often, ms. */
const HOT_AFTER = 20_000;

const until = (tab: Tab, ms: number): Promise<unknown> =>
  tab.evaluate(`new Promise((then) => setTimeout(then, ${ms}))`);

/** The tones of calls alone: every one goes through one output, which the first call opened. */
const tones = async (tab: Tab, after: number): Promise<Stretch[]> => {
  const [calls] = (await heardApart(tab))
    .map((moments) => stretches(moments, { gap: 500 }).filter(({ from }) => from > after))
    .filter((all) => all.length > 0)
    .toSorted((a, b) => b.length - a.length);
  return calls ?? [];
};

it.each([
  ['hidden for 47 minutes', 47, false],
  ['asleep for 8 hours', 8 * 60, true],
])(
  '%s with two calls due: one call sounds, late, at once, none twice',
  async (_, gone, asleep) => {
    const server = await serve({ dir: inject('site'), extra: HEAR_FILES });
    onTestFinished(() => server.close());
    const tab = await openLeft(server.url, lidAndRest(START), 'wide', HEAR_APART_SCRIPT);
    await expect.poll(async () => (await seen(tab)).headline, { timeout: 30_000 }).not.toBe('');
    await until(tab, 1_500);
    await tab.tap('.ear');
    await expect
      .poll(() => tab.evaluate('document.querySelector(".ear").innerText'))
      .toContain('Sound is on');
    await until(tab, 2_000);
    await tab.hide();
    await expect.poll(() => tab.evaluate('document.hidden')).toBe(true);
    if (asleep) await tab.freeze();
    await tab.evaluate(`ahead += ${gone * MINUTE}`);
    const back = Date.now();
    await tab.show();
    await expect
      .poll(async () => (await seen(tab)).number)
      .toMatch(gone < 60 ? new RegExp(`^.?\\+${gone - DUE.lid}:`) : /\+7 h 4/);
    await until(tab, HOT_AFTER + 3_000);
    const heard = await tones(tab, back);
    expect(heard).toHaveLength(2);
    expect(heard[0]!.from - back).toBeLessThan(2_500);
    expect(Math.abs(heard[1]!.from - heard[0]!.from - HOT_AFTER)).toBeLessThan(700);
    // The touch that hushes it brings the other one, once and late.
    const hushed = Date.now();
    await tab.tap('.act-headline');
    await until(tab, 10_000);
    expect(await tones(tab, hushed + 250)).toHaveLength(1);
    await tab.close();
  },
  120_000,
);
