import { describe, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { beginBread } from '../browser/harness/begin-bread.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { openApp } from '../browser/harness/open-app.ts';
import { PAGE_LISTS } from '../browser/harness/page-lists.ts';
import { contact } from './support/contact.ts';
import { SLICES, type Slice } from './support/slices.ts';

/** A baker with a camera, from the page a bake begins on. */
const open = async (name: string, slice: Slice, clock?: number) => {
  const app = await openApp({ viewport: slice.view, ...(clock === undefined ? {} : { clock }) });
  await app.page.locator('.start-grid').waitFor();
  const camera = contact(app, name, slice);
  const baker = new Baker(app);
  return {
    ...camera,
    app,
    baker,
    async done() {
      await camera.lay();
      expectNoFaults(app.faults);
      await app.close();
    },
  };
};

describe.each(PAGE_LISTS.map((list) => [list.name, list] as const))(
  'photographs every page of the list %s',
  (file, { pages, clock }) => {
    it.each(SLICES)('%s', async (_, slice) => {
      const { app, baker, shoot, done } = await open(file, slice, clock);
      for (const { name, go } of pages) {
        await go(baker);
        await app.turn(1_000);
        await shoot(name);
      }
      await done();
    });
  },
);

it.each(SLICES)('photographs each bread as it is read: %s', async (_, slice) => {
  const { app, baker, shoot, done } = await open('breads', slice);
  await baker.press('Which bread?');
  const breads = await app.page.locator('.tile').allInnerTexts();
  await baker.tap('.slab');
  for (const bread of breads) {
    await beginBread(baker, bread, 'Feed now');
    await shoot(`read: ${bread}`);
    await baker.press('More');
    await baker.press('End this bake');
    await baker.noted(() => baker.hold());
    await app.reopen();
    await app.page.locator('.start-grid').waitFor();
  }
  await done();
});

it.each(SLICES)('photographs two and three bakes at once: %s', async (_, slice) => {
  const { app, baker, shoot, done } = await open('several', slice);
  await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl');
  await baker.toStart();
  await shoot('start, one runs');
  await beginBread(baker, 'Lane wheat', 'My loaves are in the fridge');
  await shoot('two bakes');
  await baker.toStart();
  await shoot('start, two run');
  await beginBread(baker, 'Olive and seed', 'Feed now');
  await shoot('three bakes');
  await baker.press('More');
  await shoot('more, three bakes');
  await baker.press('Back to the bench');
  await app.turn(9 * 3_600_000);
  await shoot('a call of another bake');
  await baker.hush();
  await shoot('hushed');
  if ((await baker.page.locator('.return').count()) > 0) {
    await baker.press('I’ve read it');
    await shoot('read');
  }
  await done();
});
