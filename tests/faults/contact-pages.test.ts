import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { beginBread } from '../browser/harness/begin-bread.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { openApp } from '../browser/harness/open-app.ts';
import { contact, SLICES, type Slice } from './support/contact.ts';

/** A baker with a camera, from the page a bake begins on. */
const open = async (name: string, slice: Slice) => {
  const app = await openApp({ viewport: slice.view });
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

it.each(SLICES)('photographs start, ways and kitchen: %s', async (_, slice) => {
  const { app, baker, shoot, done } = await open('pages', slice);
  await shoot('start');
  for (const ask of ['Which bread?', 'How many loaves?', 'How warm is', 'Where is your dough?']) {
    await baker.press(ask);
    await shoot(ask);
    await baker.tap('.slab');
  }
  await baker.press('Past bakes');
  await shoot('past bakes, none');
  await baker.tap('.slab');
  await baker.press('More');
  await shoot('more of start');
  await baker.press('Ways of showing');
  await shoot('ways');
  await baker.press('Size by a bank card');
  await shoot('bank card');
  await app.reopen();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await app.page.locator('.kitchen-grid').waitFor();
  await shoot('kitchen');
  const pages = await app.page.locator('.kitchen-grid .control').allInnerTexts();
  for (const page of pages) {
    const [ask = ''] = page.split('\n');
    await baker.press(ask);
    await app.turn(1_000);
    await shoot(`kitchen: ${ask}`);
    await app.reopen();
    await baker.tap('.bench-controls .control:has-text("Kitchen")');
    await app.page.locator('.kitchen-grid').waitFor();
  }
  expect(pages.length).toBeGreaterThan(3);
  await done();
});

it.each(SLICES)('photographs readings and what lies over the bench: %s', async (_, slice) => {
  const { baker, shoot, done } = await open('over', slice);
  await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl', 2);
  await shoot('bulk.proving');
  await baker.press('More');
  await shoot('more');
  await baker.press('Fewer loaves');
  await shoot('fewer loaves');
  await baker.press('Back to the bench');
  await baker.press('More');
  await baker.press('End this bake');
  await shoot('end this bake');
  await baker.press('Keep baking');
  await baker.press('Back to the bench');
  for (const kind of [
    'Dough temperature',
    'Dough rise, by eye',
    'Levain rise, in %',
    'Edge and bubbles',
    'Dent test',
    'Piece weight',
    'Crust colour',
  ]) {
    await baker.press('New reading');
    if (kind === 'Dough temperature') await shoot('new reading');
    if (kind === 'Dough rise, by eye') {
      await baker.key('245');
      await shoot('a number first');
      await baker.press('Clear');
    }
    // What makes no sense at this step is behind the others.
    if ((await baker.page.locator(`.sheet button:has-text("${kind}")`).count()) === 0) {
      await baker.press('Other readings');
    }
    await baker.press(kind);
    await shoot(kind);
    if (kind === 'Edge and bubbles') {
      await baker.press('Domed');
      await shoot('bubbles');
    }
    await baker.press('Back to the bench');
  }
  await baker.press('New reading');
  await baker.press('Dough temperature');
  await baker.key('38');
  await shoot('an odd number');
  await baker.tap('.slab');
  await shoot('an odd number, asked');
  await baker.noted(() => baker.tap('.slab'));
  await baker.press('New reading');
  await baker.press('Readings so far');
  await shoot('readings so far');
  await baker.press('Dough temperature');
  await shoot('mended');
  await done();
});

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
