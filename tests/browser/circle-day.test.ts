import { expect, it } from 'vitest';
import type { Fact } from '../../src/core/records/fact.ts';
import { DAY } from '../../src/core/units.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, START } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

const THURSDAY = START - DAY;
const SATURDAY_NOON = Date.UTC(2026, 2, 7, 12);
const NAME = 'Q of the mill';

const slab = (words: string): string => `.slab:has-text("${words}")`;

it('goes from an order by the weight of its loaf to a plan that fits, and tells when to feed', async () => {
  const app = await openApp({ clock: THURSDAY });
  const baker = new Baker(app);
  const { page } = baker;
  const reads = (words: string) =>
    expect.poll(() => baker.headline().then((text) => text.replace(/\s/g, ' '))).toBe(words);
  const shot = async (name: string): Promise<void> => {
    if (process.env['SHOTS']) await app.screenshot(`circle-day-${name}`);
  };
  const table = (): Promise<string> =>
    page
      .locator('table')
      .first()
      .innerText()
      .then((text) => text.replace(/[\s\u00a0]+/g, ' '));
  await page.locator('.start-grid').waitFor();
  await press(baker, ['Bread circle']);
  await baker.tap(slab('New order'));
  await baker.press('Sat');
  await baker.tap(slab('Add an order'));
  await baker.press('Somebody new');
  await baker.write(NAME);
  await turned(baker, '.slab:visible');
  await baker.press('Lane wheat');
  await reads(`${NAME}, Sat 7 Mar`);
  await baker.press('1 Lane wheat');
  await baker.press('Weight when cool');
  await baker.key('700');
  await turned(baker, '.slab:visible');
  await turned(baker, '.slab:visible');
  await press(baker, ['Fetched', '12:00']);
  await shot('order');
  await turned(baker, '.slab:visible');
  await press(baker, ['Dough and loads']);
  await reads('Dough and loads');
  await shot('dough');
  expect(await table()).toContain('Lane wheat, 700 g 1 805 g 1');
  await baker.tap(slab('Plan the day'));
  await page.locator('h1:has-text("Plan a day")').waitFor();
  await expect.poll(() => page.locator(slab('Make a plan')).innerText()).toContain('How warm');
  await shot('asked');
  await press(baker, ['How warm', '22']);
  await baker.tap(slab('Make a plan'));
  await page.locator('.tape').waitFor();
  await reads('Ready Sat 12:00');
  await baker.noted(() => baker.tap(slab('Take it')));
  // No order and no name goes with it: only the bread.
  const facts = ((await app.storeRows()) as { fact: Fact }[]).map(({ fact }) => fact);
  const [plan] = facts.flatMap((fact) => (fact.kind === 'plan' ? fact.plan : []));
  expect(plan!.ready.map(({ at }) => at)).toEqual([SATURDAY_NOON]);
  expect(plan!.ask.bakes.map(({ recipe }) => [recipe.loaves, recipe.piece])).toEqual([[1, 805]]);
  expect(JSON.stringify(facts)).not.toContain('mill');
  await turned(baker, slab('That’s it'));
  await press(baker, ['Sat 7 Mar', 'Dough and loads', 'Levain']);
  await shot('levain');
  await expect
    .poll(() => page.locator('.bench-words').innerText())
    .toMatch(/Feed for Lane wheat, 700.g: Thu 2\d:\d\d, 1:\d+:\d+\./);
  expectNoFaults(app.faults);
});
