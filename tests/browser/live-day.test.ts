import { readFile } from 'node:fs/promises';
import ICAL from 'ical.js';
import { expect, it, vi } from 'vitest';
import type { DayPlan } from '../../src/core/day/laid/day-plan.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { goingOn, runningDay } from '../fakes/running-day.ts';
import { walkTo } from '../machines/support/onward.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';
import { putRows } from './harness/put-rows.ts';

const NOON = Date.UTC(2031, 4, 3, 10);
const words = (text: string): string => text.replaceAll('\u00a0', ' ');

const rowsOf = async (app: App): Promise<LogRecord[]> => (await app.storeRows()) as LogRecord[];
const plansOf = (rows: readonly LogRecord[]): { at: number; plan: DayPlan }[] =>
  rows.flatMap(({ fact }) => (fact.kind === 'plan' ? [{ at: fact.at, plan: fact.plan }] : []));

/** The app on a log, at the day as it runs; what calls is hushed. */
async function atTheDay(records: readonly LogRecord[], now: number): Promise<Baker> {
  const app = await openApp({ clock: now });
  await app.page.evaluate(putRows(records));
  await app.reopen();
  const baker = new Baker(app);
  await app.page.locator('.act-headline').first().waitFor();
  const open = app.page.locator('.sheet h1:has-text("The day so far")');
  const offered = app.page.locator('button:has-text("The day’s plan")');
  // What rings takes the first touch for itself.
  const isOffered = (): Promise<boolean> =>
    offered.waitFor({ timeout: 4_000 }).then(
      () => true,
      () => false,
    );
  await baker.press('More');
  if (!(await isOffered())) await baker.press('More');
  await baker.press('The day’s plan');
  await open.waitFor();
  return baker;
}

/** What the page says in its one sentence, once the planner has answered. */
async function said(baker: Baker): Promise<string> {
  const line = baker.page.locator('.live-stands');
  await vi.waitFor(
    async () => {
      await baker.app.turn(200);
      expect(await line.innerText()).not.toBe('Planning the day again');
    },
    { timeout: 30_000, interval: 100 },
  );
  return words(await line.innerText());
}

/** What is done, announced or promised stands where it stood in the plan before. */
function expectNothingFrozenMoved(plans: readonly { at: number; plan: DayPlan }[]): void {
  let looked = 0;
  plans.slice(1).forEach(({ at, plan }, i) => {
    for (const was of plans[i]!.plan.touches) {
      const is = plan.touches.find(({ batch, name }) => batch === was.batch && name === was.name);
      const isNear = was.at >= at && was.at <= at + 15 * MINUTE;
      if (!(was.frozen || isNear)) continue;
      expect([was.name, is?.at]).toEqual([was.name, was.at]);
      looked += 1;
    }
  });
  expect(looked).toBeGreaterThan(3);
}

it('keeps a Saturday’s bread at noon: levain two hours late, bulk forty minutes early, two hours out', async () => {
  const day = runningDay('levain.ripening', 120, 'UTC');
  const { hand } = day;
  // Friday morning: the levain was fed two hours late.
  hand.turnTo(Date.UTC(2031, 4, 2, 6, 31));
  let baker = await atTheDay(hand.records, hand.now);
  expect(await said(baker)).toMatch(
    /^Mix flour and water moves to \d\d:\d\d: the levain is ready \d\sh.* later\.$/,
  );
  await baker.app.screenshot('live-late-levain');
  await baker.noted(() => baker.press('Take the new plan'));
  let rows = await rowsOf(baker.app);
  expect(plansOf(rows).map(({ plan }) => plan.sequence)).toEqual([1, 2]);
  expectNoFaults(baker.app.faults);

  // In the afternoon the dough has risen further than anyone thought.
  const on = goingOn(rows, Date.UTC(2031, 4, 2, 6, 40));
  walkTo(on, 'a', 'bulk.proving');
  const likely = (): number => on.kitchen.bakes['a']!.context.marks['likely']!;
  const planned = plansOf(rows)
    .at(-1)!
    .plan.touches.find(({ name }) => name === 'divide')!.at;
  on.turnTo(Math.max(on.now, planned - 90 * MINUTE));
  for (let percent = 20; likely() > planned - 40 * MINUTE && percent < 90; percent += 2)
    on.do({
      kind: 'reading',
      by: 'hand',
      bake: 'a',
      reading: { what: 'rise', percent, of: 'dough' },
    });
  expect(likely()).toBeLessThan(planned - 30 * MINUTE);
  baker = await atTheDay(on.records, on.now + MINUTE);
  expect(await said(baker)).toMatch(
    /^Divide moves to \d\d:\d\d: the dough is ready \d+\smin sooner\.$/,
  );
  await baker.noted(() => baker.press('Take the new plan'));
  await vi.waitFor(async () => expect(await said(baker)).toBe('The new plan stands.'));

  // And then the bell rings: two hours out, from ten minutes on.
  await baker.press('Something came up');
  await baker.press('Called away');
  await baker.press('In 10');
  await baker.press('2 h');
  await baker.page.locator('h2:has-text("Do this")').waitFor();
  await baker.app.turn(700);
  await baker.app.screenshot('live-called-away');
  await baker.noted(() => baker.press('Do it this way'));
  rows = await rowsOf(baker.app);
  const plans = plansOf(rows);
  expect(plans.map(({ plan }) => plan.sequence)).toEqual([1, 2, 3, 4]);
  const { plan } = plans.at(-1)!;
  const [away] = plan.ask.away;
  expect(away!.to - away!.from).toBe(2 * HOUR);
  for (const { at, hands, frozen } of plan.touches)
    if (!frozen) expect(at < away!.to && at + hands * MINUTE > away!.from).toBe(false);
  expect(plan.ready).toEqual([{ batch: 'Cherry and hazelnut', at: NOON }]);
  expectNothingFrozenMoved(plans);

  // A copy for the calendar: newer than any before it, at the plan's hours.
  const [download] = await Promise.all([
    baker.page.waitForEvent('download'),
    baker.press('To the calendar'),
  ]);
  expect(download.suggestedFilename()).toBe('loafward-day.ics');
  const file = await readFile(await download.path(), 'utf8');
  const events = new ICAL.Component(ICAL.parse(file) as unknown as unknown[]).getAllSubcomponents(
    'vevent',
  );
  expect(events).toHaveLength(
    new Set(plans.flatMap((one) => one.plan.touches.map(({ name }) => name))).size,
  );
  const sequences = events.map((event) => Number(event.getFirstPropertyValue('sequence')));
  expect(new Set(sequences)).toEqual(new Set([4]));

  // And one page for the fridge door, of either paper, with nothing cut off.
  await baker.page.evaluate(() => (window.print = () => undefined));
  await baker.press('Print the day');
  await baker.page.locator('.printed-day').waitFor({ state: 'attached' });
  const page = baker.page;
  for (const [format, width, height] of [
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const) {
    await page.emulateMedia({ media: 'print' });
    const px = (mm: number): number => Math.floor(((mm - 24) / 25.4) * 96);
    await page.setViewportSize({ width: px(width), height: px(height) });
    const box = await page.locator('.printed-day').evaluate((el) => ({
      ...{ width: el.scrollWidth, height: el.scrollHeight },
      cut: [...el.querySelectorAll('td, th, p, h1, h2')]
        .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0)
        .map((one) => one.textContent),
      rows: el.querySelectorAll('tbody tr').length,
    }));
    expect(box.width).toBeLessThanOrEqual(px(width));
    expect(box.height).toBeLessThanOrEqual(px(height));
    expect(box.cut).toEqual([]);
    expect(box.rows).toBe(plan.touches.length + 1);
    await baker.app.screenshot(`printed-${format}`);
    const sheet = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
    expect(sheet.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    // The printer has had it: it is gone, until it is pressed for anew.
    if (format === 'A4') {
      await page.emulateMedia({ media: 'screen' });
      await page.setViewportSize({ width: 1280, height: 800 });
      if ((await page.locator('.printed-day').count()) === 0) await baker.press('Print the day');
      await page.locator('.printed-day').waitFor({ state: 'attached' });
    }
  }
  expectNoFaults(baker.app.faults);
});
