import { expect, inject, it, onTestFinished } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { HEAR_FILES, HEAR_SCRIPT, heard, stall, stretches } from './harness/hear.ts';
import { openTab } from './harness/tab.ts';

/** A rest of 30 minutes on a rehearsal's clock, 60 times as fast: 30 s of real time. */
const REST_MS = 30_000;
const ACT_EVERY = 6_000;
/** From the finger on the glass to silence. */
const HUSHED_MS = 200;

it('is heard on time in real time, visible and hidden, and again where the deadline moved to', async () => {
  const server = await serve({ dir: inject('site'), extra: HEAR_FILES });
  onTestFinished(() => server.close());
  const tab = await openTab(`${server.url}/?rehearsal`, HEAR_SCRIPT);
  const text = (selector: string) =>
    tab.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`);
  /** Presses what is written so till the screen shows what it should: real hands, real dead times. */
  const pressUntil = async (words: string, done: () => Promise<boolean>) => {
    await expect
      .poll(async () => {
        if (await done()) return true;
        const found = await tab.evaluate(`(() => {
          document.querySelector('#wanted')?.removeAttribute('id');
          const all = [...document.querySelectorAll('button')].filter((b) => !b.ariaDisabled);
          const button = all.find((b) => b.textContent.includes(${JSON.stringify(words)}));
          if (button) button.id = 'wanted';
          button?.scrollIntoView({ block: 'center' });
          return button !== undefined;
        })()`);
        if (found) await tab.tap('#wanted');
        return false;
      })
      .toBe(true);
  };
  const stands = (words: string) => async () => String(await text('.act-headline')).includes(words);
  const shows = (selector: string, words: string) => async () =>
    String(await text(selector)).includes(words);

  await expect.poll(stands('Start a bake')).toBe(true);
  await pressUntil('Tap to arm sound', shows('.ear', 'Sound is on'));
  await pressUntil('Where is your dough', stands('Where is your dough'));
  await pressUntil('Weighing comes next', stands('Start a bake'));
  await pressUntil('How warm is the kitchen', stands('Kitchen'));
  await pressUntil('2', shows('.pad-typed', '2'));
  await pressUntil('2', shows('.pad-typed', '22'));
  await pressUntil('That’s it', stands('Start a bake'));
  await pressUntil('Start baking', stands('wheat'));
  await pressUntil('It’s in', stands('rye'));
  await pressUntil('It’s in', stands('water'));
  await pressUntil('It’s in', stands('levain'));
  await pressUntil('It’s in', stands('Mix until'));
  await pressUntil('It’s mixed', stands('Let the dough rest'));
  // The deadline moves: taken back and pressed again some seconds later.
  await pressUntil('Take that back', stands('Mix until'));
  const from = Date.now();
  await pressUntil('It’s mixed', stands('Let the dough rest'));
  const until = Date.now();
  await tab.hide();
  await expect.poll(() => tab.evaluate('document.hidden')).toBe(true);

  await expect
    .poll(async () => (await heard(tab)).some(({ wall }) => wall > until + REST_MS + 8_000), {
      timeout: 60_000,
    })
    .toBe(true);
  // What was said as the rest began is long over.
  const after = (await heard(tab)).filter(({ wall }) => wall > until + 15_000);
  const hidden = stretches(after, { gap: 1_000 });
  expect(hidden.length).toBeGreaterThanOrEqual(1);
  // Not at the first deadline, only at the moved one; then again every six seconds, words between.
  expect(hidden[0]!.from).toBeGreaterThanOrEqual(from + REST_MS - 100);
  expect(hidden[0]!.from).toBeLessThanOrEqual(until + REST_MS + 1_500);
  const again = hidden.map((one) => Math.abs(one.from - hidden[0]!.from - ACT_EVERY));
  expect(Math.min(...again)).toBeLessThan(1_500);

  await tab.show();
  await expect.poll(() => tab.evaluate('document.hidden')).toBe(false);
  const back = Date.now();
  await expect
    .poll(
      async () =>
        stretches(
          (await heard(tab)).filter(({ wall }) => wall > back),
          { gap: 1_000 },
        ).length,
    )
    .toBeGreaterThanOrEqual(1);
  /** Once it sounds, a touch anywhere ends it, and nothing sounds for so long, ms. */
  const endsByTouch = async (quiet: number): Promise<void> => {
    await tab.evaluate('scrollTo(0, 0)');
    await tab.evaluate(`addEventListener('touchstart', (e) => {
      globalThis.touched = performance.timeOrigin + e.timeStamp;
    }, { capture: true, once: true })`);
    await expect
      .poll(async () => (await heard(tab)).at(-1)!.rms, { interval: 10, timeout: 20_000 })
      .toBeGreaterThan(0.003);
    await tab.tap('.act-headline');
    const touched = Number(await tab.evaluate('globalThis.touched'));
    await expect
      .poll(async () => (await heard(tab)).some(({ wall }) => wall > touched + quiet))
      .toBe(true);
    const moments = await heard(tab);
    const during = moments.filter(({ wall }) => wall > touched - 300 && wall < touched + 50);
    expect(stretches(during)).not.toEqual([]);
    const silent = touched + HUSHED_MS + stall(moments, touched - 100, touched + 300);
    expect(stretches(moments.filter(({ wall }) => wall > silent))).toEqual([]);
  };
  // In the middle of a tone, past the next ones; and in the middle of words, past their end.
  await endsByTouch(8_000);
  let asked = false;
  await pressUntil('Say that again', async () => asked || !(asked = true));
  await endsByTouch(4_000);
});
