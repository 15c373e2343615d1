import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, inject, it, onTestFinished } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { serve } from '../../src/serve/serve.ts';
import { killBrowser } from './harness/kill.ts';
import { openApp, type App } from './harness/open-app.ts';

/** A small fixed generator, so that the moments are random and the same each time. */
const chance = (seed: number) => () => {
  seed = (seed * 1_664_525 + 1_013_904_223) % 4_294_967_296;
  return seed / 4_294_967_296;
};

const headline = (app: App) => app.page.locator('.act-headline').first().innerText();

/** Presses the slab and waits until the screen shows it as taken. */
const press = async (app: App): Promise<void> => {
  const before = await headline(app);
  await expect
    .poll(async () => {
      if ((await headline(app)) !== before) return true;
      await app.page.locator('.slab').tap();
      return false;
    })
    .toBe(true);
};

/** Kills; more of them with all tablets, in `npm run faults`. */
const ROUNDS = inject('everyTablet') ? 12 : 4;

it('loses no fact that was shown as taken, killed at random moments', async () => {
  const random = chance(20_310_503);
  const profile = mkdtempSync(join(tmpdir(), 'loafward-kill-'));
  onTestFinished(() => rmSync(profile, { recursive: true, force: true, maxRetries: 20 }));
  const server = await serve({ dir: inject('site') });
  onTestFinished(() => server.close());
  const open = () => openApp({ profile, server, clock: 'real' });

  let app = await open();
  // Its folder cannot be emptied while a browser writes there.
  onTestFinished(() => app.close());
  await app.page.locator('.start-grid').waitFor();
  // A tap in the first 400 ms is rightly nothing: press until the keypad is there.
  await expect
    .poll(async () => {
      if ((await app.page.locator('.pad').count()) > 0) return true;
      await app.page.locator('button.control:has-text("How warm is the kitchen?")').tap();
      return false;
    })
    .toBe(true);
  await expect
    .poll(async () => {
      await app.page.locator('.key:text-is("2")').tap();
      return (await app.page.locator('.pad-typed').innerText()).length;
    })
    .toBe(2);
  await press(app);
  await press(app);
  // The sound check, by sight only.
  await expect
    .poll(async () => {
      if ((await headline(app)) === 'Sight only') return true;
      await app.page.locator('button.control:has-text("Sight only")').tap();
      return false;
    })
    .toBe(true);
  await press(app);
  // What is shown as taken by now: the start.
  let shown = 1;
  for (let round = 1; round <= ROUNDS; round += 1) {
    const card = app.page.locator('.return button');
    if ((await card.count()) > 0) await card.tap();
    for (let n = Math.floor(random() * 3); n >= 0; n -= 1) {
      await press(app);
      shown += 1;
    }
    const late = app.page
      .locator('.slab')
      .tap()
      .catch(() => undefined);
    await app.page.waitForTimeout(Math.round(random() * 60)).catch(() => undefined);
    expect(killBrowser(profile), `round ${round}: processes killed`).toBeGreaterThan(0);
    await late;
    await app.close().catch(() => undefined);

    app = await open();
    await app.page.locator('.act-headline').first().waitFor();
    const rows = (await app.storeRows()) as LogRecord[];
    expect(rows.length, `round ${round}: facts kept`).toBeGreaterThanOrEqual(shown);
    expect(rows.length, `round ${round}: at most the one under way more`).toBeLessThanOrEqual(
      shown + 1,
    );
    expect(rows.map(({ seq }) => seq)).toEqual(rows.map((_, i) => i + 1));
    expect(replay(rows, MACHINES).trouble, `round ${round}`).toBeNull();
    expect(await app.page.locator('.notice').count(), `round ${round}`).toBe(0);
    shown = rows.length;
  }
});
