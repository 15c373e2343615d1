import { expect, it } from 'vitest';
import type { Ages } from '../../src/core/small/ages.ts';
import { Baker } from '../browser/harness/baker.ts';
import { standWith } from '../browser/harness/child-stand.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { openApp, type App } from '../browser/harness/open-app.ts';
import { press } from '../browser/harness/page-step.ts';
import { WHOLE_BAKE } from '../browser/harness/whole-bake.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../machines/support/recipe.ts';
import { childCamera, type Theme } from './support/child-camera.ts';
import { stationsOf } from './support/stations.ts';

/** A grown-up beside a child: what is not the child's to press is held. */
class WithChild extends Baker {
  override async slab(): Promise<void> {
    if ((await this.page.locator('.slab').first().getAttribute('class'))?.includes('hold'))
      return this.noted(() => this.hold());
    return super.slab();
  }
}

const LABELS: Readonly<Record<Ages, string>> = {
  '4-6': '4 to 6',
  '7-9': '7 to 9',
  '10-12': '10 to 12',
};
const turnTo = async (baker: Baker, ages: Ages): Promise<void> => {
  await press(baker, ['More', 'Small hands', LABELS[ages]]);
  await baker.page.locator('.small-task').waitFor();
};
const gated = async (app: App): Promise<boolean> =>
  (await app.page.locator('.small-stand').count()) > 0;

const WALKS = [
  ['4-6', 'light'],
  ['7-9', 'light'],
  ['10-12', 'light'],
  ['4-6', 'dark'],
] as const satisfies readonly (readonly [Ages, Theme])[];

/** Every state of a whole bake as a child sees it, for eyes: tests/browser/out/sheet-small-*.png. */
it.each(WALKS)('photographs a whole bake with small hands: %s, %s', async (ages, theme) => {
  const app = await openApp();
  const baker = new WithChild(app);
  const camera = childCamera(app, `small-${ages}`, theme);
  await baker.begin();
  await turnTo(baker, ages);
  const seen = new Set<string>();
  for (const { name, go } of WHOLE_BAKE) {
    // Lists look alike from line to line, and so do both loads.
    const once = name.replace(/^load[12]/, 'load').replace(/-[2-9]$/, '-1');
    const isNew = !seen.has(once);
    seen.add(once);
    if (isNew) await camera.shoot(once);
    if (isNew && (await gated(app))) {
      await baker.openGate();
      await camera.shoot(`${once}-open`);
    }
    await go(baker, isNew ? () => camera.shoot(`${once}-rings`) : undefined);
  }
  await camera.shoot('done');
  await camera.lay();
  expect(seen.size).toBeGreaterThan(40);
  camera.expectWhole();
  expectNoFaults(app.faults);
  await app.close();
});

/** Those that the bake above does not pass: the other ways of baking, and every task that calls. */
it('photographs the stages and tasks of other bakes with small hands', async () => {
  const app = await openApp();
  const baker = new WithChild(app);
  const camera = childCamera(app, 'small-others', 'light');
  const names = new Set<string>();
  const ways = [
    [RECIPE, 'mix.first', '4-6'],
    [SCOOP, 'bulk.proving', '7-9'],
    [TIN, 'shape.divide', '10-12'],
    [STONE, 'oven.queued', '7-9'],
  ] as const;
  await app.page.locator('.start-grid').waitFor();
  for (const [recipe, from, ages] of ways) {
    const begun = stationsOf(recipe, 0, from);
    for (const [n, { name, at }] of begun.entries()) {
      // The first of a way is come to all the same: there the ages are turned to.
      if (n > 0 && names.has(name)) continue;
      names.add(name);
      await standWith(baker, (now) => stationsOf(recipe, now - at, from)[n]!.records);
      if (n === 0) await turnTo(baker, ages);
      await camera.shoot(name);
    }
  }
  await camera.lay();
  expect(names.size).toBeGreaterThan(60);
  camera.expectWhole();
  expectNoFaults(app.faults);
  await app.close();
});
