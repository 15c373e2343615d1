import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { check, checkPainted, measure, MM } from './harness/look.ts';
import { dress, WAYS } from './harness/look-walk.ts';
import { openApp } from './harness/open-app.ts';
import { readPng } from './harness/pixels.ts';
import { pairwise } from './harness/ways.ts';

/** Pages of Start and Kitchen: how each is reached from the one before, and what leads back to its grid. */
const PAGES: readonly (readonly [string, (baker: Baker) => Promise<void>])[] = [
  ['start', async (b) => b.page.locator('.start-grid').waitFor()],
  ['which bread', (b) => b.press('Which bread?')],
  ['how many loaves', async (b) => (await b.tap('.slab'), b.press('How many loaves?'))],
  ['how warm', async (b) => (await b.tap('.slab'), b.press('How warm is the kitchen?'))],
  ['where the dough is', async (b) => (await b.tap('.slab'), b.press('Where is your dough?'))],
  ['kitchen', async (b) => (await b.tap('.slab'), b.tap('button:has(:text-is("Kitchen"))'))],
  ['oven', (b) => b.press('Oven')],
  ['fridge', async (b) => (await b.tap('.slab'), b.press('Fridge'))],
  ['bowls', async (b) => (await b.tap('.slab'), b.press('Bowls'))],
  ['scale', async (b) => (await b.tap('.slab'), b.press('Scale'))],
  ['tablet', async (b) => (await b.tap('.slab'), b.press('This tablet'))],
];

it('holds sizes, gaps, contrast and axe on every page of Start and Kitchen, in every way', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const ways = pairwise(WAYS);
  for (const [n, [name, go]] of PAGES.entries()) {
    await go(baker);
    await app.turn(600);
    // Each page in two of the few ways, so that every way is met; the plain one is where it is walked.
    for (const way of [ways[n % ways.length]!, ways[(n + 3) % ways.length]!]) {
      const at = `${name}, ${Object.values(way).join(', ')}`;
      await dress(app, way);
      const found = await measure(app);
      check(at, MM[way.view], way.text === 'bigger' ? 1.4 : 1, found);
      checkPainted(at, found, readPng(await app.page.screenshot()));
      expect.soft(await app.axe(), `axe: ${at}`).toEqual([]);
    }
    await dress(app, { view: 'wide', theme: 'light', hands: 'right', text: 'plain' });
  }
  expectNoFaults(app.faults);
}, 240_000);
