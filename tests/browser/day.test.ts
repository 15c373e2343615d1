import { expect, it } from 'vitest';
import type { Fact } from '../../src/core/records/fact.ts';
import { DAY } from '../../src/core/units.ts';
import { Baker } from './harness/baker.ts';
import { DAY_PAGES } from './harness/day-pages.ts';
import { expectNoFaults } from './harness/faults.ts';
import { dress, lookAt, WAYS } from './harness/look-at.ts';
import { openApp, START } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';
import { everyWay, pairwise } from './harness/ways.ts';

const THURSDAY = START - DAY;
const SATURDAY_NOON = Date.UTC(2026, 2, 7, 12);

/** Taps a hand makes, each counted. */
class Counted extends Baker {
  taps = 0;
  override async tapNow(selector: string): Promise<void> {
    this.taps += 1;
    await super.tapNow(selector);
  }
}

it('lays a bake for Saturday noon from the first screen on, by taps alone, within a minute', async () => {
  const app = await openApp({ clock: THURSDAY });
  const baker = new Counted(app);
  await baker.page.locator('.start-grid').waitFor();
  const from = await baker.page.evaluate(() => Date.now());
  for (const label of ['Plan a day', 'Ready when?', 'Sat', '12:00', 'How warm', '22']) {
    await baker.press(label);
    if (process.env['SHOTS']) await app.screenshot(`taps-${label.replace(/\W+/g, '-')}`);
  }
  await baker.tap('.slab:has-text("Make a plan")');
  await baker.page.locator('.tape').waitFor();
  expect(await baker.headline()).toBe('Ready Sat 12:00');
  await baker.noted(() => baker.tap('.slab:has-text("Take it")'));
  expect(baker.taps).toBeLessThanOrEqual(8);
  // The clock is turned by a beat before each tap: slower than most hands, and no waiting besides.
  expect((await baker.page.evaluate(() => Date.now())) - from).toBeLessThan(60_000);
  const facts = ((await app.storeRows()) as { fact: Fact }[]).map(({ fact }) => fact);
  expect(facts.map(({ kind }) => kind)).toEqual(['plan']);
  const [plan] = facts.flatMap((fact) => (fact.kind === 'plan' ? fact.plan : []));
  expect(plan!.ready.map(({ at }) => at)).toEqual([SATURDAY_NOON]);
  expect(plan!.touches.length).toBeGreaterThan(10);
  // It outlives a reload, and the start tells what comes next.
  await app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  await expect
    .poll(() => baker.page.locator('button:has-text("Plan a day")').innerText())
    .toMatch(/next: feed the levain, 22:\d\d/);
  expectNoFaults(app.faults);
});

/** Where the presses beside the slab end, px: one number where they stand in one row. */
const feetOfPresses = (baker: Baker): Promise<number[]> =>
  baker.page
    .locator('.bench-controls > *, .bench-further > *')
    .evaluateAll((all) => all.map((el) => Math.round(el.getBoundingClientRect().bottom)));

const PLANS = ['day, the plan', 'day, nothing fits', 'day, taken'];

it('has the tape and what would do whole on every tablet, in every way', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  for (const { name, go } of DAY_PAGES) {
    await go(baker);
    await app.turn(1_000);
    const ways =
      name === PLANS[0] ? everyWay({ ...WAYS, hands: ['right'] } as const) : pairwise(WAYS);
    if (name === PLANS[0]) {
      await dress(app, { view: 'small', theme: 'light', hands: 'right', text: 'plain' });
      await settled(app.page);
      const feet = await feetOfPresses(baker);
      expect([feet.length, new Set(feet).size], 'presses, and rows of them').toEqual([4, 1]);
    }
    if (PLANS.includes(name)) await lookAt(app, name, ways);
    else if (process.env['SHOTS'])
      await app.screenshot(`page-${name.replace(/[^a-z0-9]+/gi, '-')}`);
  }
  expectNoFaults(app.faults);
});
