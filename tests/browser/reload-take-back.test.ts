import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** Steps whose press is taken back and made again, the lid among them. */
const TAKEN_BACK = [
  'levain-feed-2',
  'levain-ripe',
  'mix-first',
  'bulk-fold',
  'bulk-spread',
  'bulk-scatter-1',
  'bulk-scatter-2',
  'bulk-verdict',
  'shape-divide',
  'proof-to-fridge',
  'oven-on',
  'load1-load',
  'load1-lift',
  'load1-unload',
];

it('comes back right from reloads and take-backs, and the store holds what was done', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const done: string[] = [];
  const reopen = async () => {
    await app.reopen();
    await app.turn(100);
    await baker.page.locator('.act-headline').first().waitFor();
  };
  const readCard = async () => {
    if ((await baker.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
  };
  await baker.begin();
  for (const { name, go } of WHOLE_BAKE) {
    if (name === 'bulk-proving' || name === 'load1-lidded') {
      // Before the first ask for its rise: that is another act.
      const before = await baker.headline();
      await app.turn(45_000);
      await readCard();
      const left = await baker.page.locator('.times-number').innerText();
      await reopen();
      await readCard();
      expect(await baker.headline(), name).toBe(before);
      expect(await baker.page.locator('.times-number').innerText(), name).toBe(left);
      done.push(`reloaded at ${name}`);
    }
    if (name === 'bulk-scatter-2') {
      // One filling is in: it stays ticked.
      const before = await baker.headline();
      const ticked = () => baker.page.locator('.lines [data-state=done]').allInnerTexts();
      const were = await ticked();
      expect(were).toHaveLength(1);
      await reopen();
      await readCard();
      expect(await baker.headline(), name).toBe(before);
      expect(await ticked()).toEqual(were);
      done.push(`reloaded at ${name}`);
    }
    if (TAKEN_BACK.includes(name)) {
      await baker.openGate();
      const before = await baker.headline();
      await go(baker);
      await baker.takeBack();
      if (name === 'load1-lift') {
        // The lid is on again and overdue: it rings, though it was hushed before.
        await expect.poll(() => baker.page.locator('.call[data-kind=hot]').count()).toBe(1);
      }
      if ((await baker.page.locator('.call').count()) > 0) await baker.hush();
      await readCard();
      await baker.openGate();
      await expect.poll(() => baker.headline(), { message: name }).toBe(before);
      done.push(`took back ${name}`);
    }
    await go(baker, async () => {
      if (name !== 'load1-lidded') return;
      await reopen();
      await expect.poll(() => baker.page.locator('.call[data-kind=hot]').count()).toBe(1);
      done.push('reloaded while the lid call rang');
    });
  }
  expect(done).toHaveLength(TAKEN_BACK.length + 4);
  const facts = await baker.facts();
  const targets = facts.flatMap((fact) => ('target' in fact ? [fact.target as string] : []));
  expect(targets).toHaveLength(TAKEN_BACK.length);
  const standing = (facts as unknown as { id: string; act?: string }[]).filter(
    ({ id }) => !targets.includes(id),
  );
  const acts = standing.flatMap(({ act }) => (act && act !== 'answer' ? [act] : []));
  // By the clock they have come far in the fridge: the slab says to bake these first.
  const load = ['pokeOver', 'scored', 'loaded', 'lidOff', 'crustReady', 'unloaded'];
  expect(acts).toEqual([
    'readThrough',
    'levainRipe',
    'starterKept',
    'mixed',
    'workedIn',
    'folded',
    'spread',
    'rolled',
    'folded',
    'bulkReady',
    'divided',
    'preshaped',
    'shaped',
    'inBaskets',
    'inFridge',
    'loafReady',
    'ovenOn',
    ...load,
    ...load,
    'ovenOff',
    'handedOver',
    'noted',
  ]);
  expectNoFaults(app.faults);
});
