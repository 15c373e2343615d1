import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

it('walks the whole bake by single taps, two loaves through one pot', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  app.page.setDefaultTimeout(5_000);
  await baker.begin().catch(async (e) => {
    await app.screenshot('stuck-begin');
    throw e;
  });
  for (const step of WHOLE_BAKE) {
    const before = await baker.headline();
    try {
      await step.go(baker);
    } catch (error) {
      await app.screenshot(`stuck-${step.name}`);
      throw new Error(`Stuck at ${step.name} (“${before}”).`, { cause: error });
    }
  }
  expect(await baker.headline()).toBe('Wash up: this bake is done');
  const acts = (await baker.facts()).flatMap(({ act }) => (act && act !== 'answer' ? [act] : []));
  expect(acts.filter((act) => act === 'lidOff')).toHaveLength(2);
  expect(acts.at(-1)).toBe('noted');
  expectNoFaults(app.faults);
});
