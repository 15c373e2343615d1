import { expect, test } from 'vitest';
import { Baker } from '../harness/baker.ts';
import { expectNoFaults } from '../harness/faults.ts';
import { actsOf, expectWhole, logOf } from '../harness/logged.ts';
import { openApp, START } from '../harness/open-app.ts';
import { Walker } from '../harness/walker.ts';

const MONTH = 30 * 24 * 60 * 60_000;

test.each([
  ['My levain is ripe', 'Throw this levain away'],
  ['My dough is in the bowl', 'Throw this dough away'],
  ['My loaves are in the fridge', 'Throw these loaves away'],
  ['My loaves are ready to bake', 'Throw these loaves away'],
])('after a month, “%s”: %s, and nothing is called ready', async (where, thrown) => {
  const app = await openApp();
  const baker = new Baker(app);
  const walker = new Walker(baker, { takeBack: [], reload: [] });
  await app.page.locator('.start-grid').waitFor();
  await baker.press('Where is your dough?');
  await baker.press(where);
  await baker.begin();
  await app.turn(1_000);
  expect((await walker.look()).headline).not.toContain('Throw');

  // The tablet lay in a drawer: the page is opened anew a month later.
  await app.page.close();
  await app.turn(MONTH).catch(() => undefined);
  await app.reopen();
  await app.turn(100);
  await app.page.locator('.act-headline').first().waitFor();
  const texts: string[] = [];
  const readAll = async () => {
    texts.push(await app.page.locator('body').innerText());
  };
  expect((await walker.look()).now).toBeGreaterThanOrEqual(START + MONTH);
  await readAll();
  await app.screenshot(`month-${where.split(' ').at(-1)}`);
  const seen = await walker.clear();
  await readAll();
  expect(seen.headline).toBe(thrown);
  expect(texts.join('\n')).not.toMatch(/\bready\b|NaN|Invalid|undefined/i);
  await walker.act(seen);
  await baker.tap('.slab');
  await app.page.locator('.start-grid').waitFor();
  const records = await logOf(app);
  expect(actsOf(records, 'bake-1').at(-1)).toBe('ended');
  expectWhole(records);
  expectNoFaults(app.faults);
  await app.close();
});
