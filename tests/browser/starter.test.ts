import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';

it('feeds the starter by one press, and every page of it fits its screen', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const measure = async (name: string) => {
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      await app.screenshot(`starter-${name}-${view}`);
      const over = await app.page.evaluate(() => ({
        tall: document.documentElement.scrollHeight - innerHeight,
        wide: document.documentElement.scrollWidth - innerWidth,
        further: document.querySelectorAll('.bench-further').length,
      }));
      expect.soft(over, `${name} at ${view}`).toEqual({
        tall: 0,
        wide: 0,
        further: 0,
      });
    }
    await app.setViewport('wide');
  };
  await app.page.locator('.start-grid').waitFor();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await app.page.locator('.kitchen-grid').waitFor();
  await baker.press('Starter');
  await measure('unknown');
  await baker.press('I fed it');
  await measure('warmth');
  await baker.key('24');
  await baker.tap('.slab');
  await measure('feed');
  await baker.noted(() => baker.tap('.tile:has-text("1:2:2")'));
  await app.page.locator('.act-detail:has-text("Ripe between")').waitFor();
  await measure('fed');
  await app.page.evaluate(() => (document.documentElement.dataset['theme'] = 'dark'));
  await app.screenshot('starter-fed-dark');
  expect.soft(await app.axe()).toEqual([]);
  await baker.press('Is it strong?');
  await measure('strong');
  for (const seen of ['By half', 'Doubled']) {
    await app.turn(2.4 * 60 * 60_000);
    await baker.noted(() => baker.tap(`.tile:has-text("${seen}")`));
  }
  await app.page.locator('.act-headline:has-text("Strong enough")').waitFor();
  await measure('answer');
  await baker.tap('.slab');
  await baker.press('How fast it is');
  await measure('speed');
  await baker.press('It’s a new starter');
  await measure('renew');
  await baker.press('Keep it');
  for (let n = 0; n < 3; n++) await baker.tap('.slab');

  // It is ripe at night: it calls in the morning, on whatever screen.
  await app.turn(13 * 60 * 60_000);
  await app.page.locator('.notice:has-text("should be ripe")').waitFor();
  await measure('due');
  await baker.noted(() => baker.press('See to it'));
  await baker.press('See to it');
  await app.page.locator('.sheet').waitFor();
  await measure('sheet');
  expect.soft(await app.axe()).toEqual([]);
  await baker.noted(() => baker.tap('.sheet .tile:has-text("1:5:5")'));
  await app.page.locator('.notice').waitFor({ state: 'detached' });
  expect(await baker.facts()).toMatchObject([
    { kind: 'starter', did: 'fed', flour: 2 },
    { kind: 'starter', did: 'rose', percent: 50 },
    { kind: 'starter', did: 'rose', percent: 100 },
    { kind: 'heard' },
    { kind: 'starter', did: 'fed', flour: 5 },
  ]);
  expectNoFaults(app.faults);
});
