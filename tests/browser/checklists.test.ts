import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';

/** Assent answers nothing. */
const ASSENT = /^(ok|okay|yes|no|done|sure|fine|good|check|checked|confirm|got it)$/i;

it('goes through a checklist item by item, on where it was left, to its spoken end', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const text = (css: string): Promise<string[]> => app.page.locator(css).allInnerTexts();
  /** What is captioned a moment after a press. */
  const caption = async (): Promise<string> => {
    await app.turn(100);
    return (await text('.caption')).join();
  };
  const heard: string[] = [];
  /** Answers every item from the one after `done` on, until the list is left; how many it has. */
  const answers = async (done: number, at: (n: number) => Promise<void>): Promise<number> => {
    for (let n = done; ; n += 1) {
      const [, item, of] = /^(\d+) of (\d+)$/.exec((await text('.slab-then')).join()) ?? [];
      expect(Number(item)).toBe(n + 1);
      expect(await baker.headline()).toMatch(/\?$/);
      const answered = [...(await text('.slab-label')), ...(await text('.tile'))];
      expect(answered.length).toBeGreaterThan(1);
      for (const label of answered) expect(label).not.toMatch(ASSENT);
      await at(n);
      await baker.slab();
      heard.push(await caption());
      if (n + 1 === Number(of)) return n + 1;
      expect(heard.at(-1)).not.toContain('List complete.');
    }
  };

  await baker.begin();
  await baker.slab();
  const before = await answers(0, async (n) => {
    if (n !== 3) return;
    const asked = await baker.headline();
    await app.reopen();
    await app.page.locator('.act-headline').first().waitFor();
    expect(await baker.headline()).toBe(asked);
    expect(await text('.caption')).toEqual(['']);
    // An unsafe answer is no answer: the same is asked again.
    await baker.answer('Clay or glass');
    expect(await baker.headline()).toBe(asked);
  });
  expect(before).toBe(7);
  expect(heard.at(-1)).toMatch(/^List complete\. .+ of starter/);

  // The end is not told again by a reload, and is once the last item was taken back and answered.
  await app.reopen();
  await app.page.locator('.act-headline').first().waitFor();
  expect(await caption()).toBe('');
  await baker.takeBack();
  expect(await caption()).not.toContain('List complete.');
  expect(await answers(6, async () => undefined)).toBe(7);
  expect(heard.at(-1)).toMatch(/^List complete\. /);

  for (let n = 0; n < 3; n += 1) await baker.slab();
  expect(await caption()).not.toContain('List complete.');
  await baker.wait(15 * 60);
  expect(await answers(0, async () => undefined)).toBe(5);
  expect(heard.at(-1)).toMatch(/^List complete\. [A-Z]/);
  expectNoFaults(app.faults);
});
