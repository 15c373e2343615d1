import type { Baker } from './baker.ts';
import { LANE } from './lane-circle.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';
import { photograph } from './photograph.ts';
import { putCircle } from './put-circle.ts';
import { openYear } from './year-kitchen.ts';

/** To what is kept of the last bake of an invented year. */
export async function toKeepsakes(baker: Baker): Promise<void> {
  await baker.page.locator('.start-grid').waitFor();
  await press(baker, ['Log']);
  await turned(baker, 'button:has-text("Cherry and hazelnut") >> nth=0');
  await press(baker, ['Album']);
  await baker.page.locator('.keep-menu').waitFor();
}

/** A file is chosen where a photo is asked for. */
export async function pickPhoto(baker: Baker, buffer: Buffer, name = 'crumb.jpg'): Promise<void> {
  const file = { name, mimeType: 'image/jpeg', buffer };
  await baker.page.locator('input[aria-label="Choose one"]').setInputFiles(file);
}

const typed = (name: string, text: string): PageStep => ({
  name,
  go: (baker) => baker.write(text),
});

/** What is kept of a bake, from nothing to all of it and to its erasing. */
export const KEEPSAKE_PAGES: readonly PageStep[] = [
  {
    name: 'kept of a bake, nothing yet',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await baker.page.evaluate(putCircle(LANE));
      await openYear(baker.app);
      await toKeepsakes(baker);
    },
  },
  to('kept of a bake, no photo yet', 'Photos'),
  {
    name: 'kept of a bake, a photo',
    async go(baker) {
      await pickPhoto(baker, await photograph(baker.page));
      await baker.page.locator('.keep-large').waitFor();
    },
  },
  to('kept of a bake, a photo to be erased', 'Erase this one'),
  to('kept of a bake, a photo that stays', 'Keep it'),
  {
    name: 'kept of a bake, a note',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await turned(baker, '.control:has(.control-ask:text-is("Note"))');
      await baker.page.locator('.letters').waitFor();
    },
  },
  {
    name: 'kept of a bake, a note by its letters',
    go: (baker) =>
      baker.page
        .locator('.typed-text')
        .fill(
          'Baked at the mill, in the small pots.\nThe crust sang for minutes.\nLess water next.',
        ),
  },
  to('kept of a bake, a note by its figures', '123 é'),
  to('kept of a bake, a note by more letters', 'More'),
  typed('kept of a bake, a note typed', 'More water next time.\nThe crust sang for minutes.'),
  back('kept of a bake, spoken notes', 1, 'Spoken notes'),
  to('kept of a bake, who ate it', 'Album of this bake', 'Who ate it'),
  to('kept of a bake, two who ate it', 'At home', 'The mill'),
  back('kept of a bake, tags', 1, 'Tags'),
  to('kept of a bake, tags on', 'Best so far', 'A gift'),
  to('kept of a bake, own words', 'Your own words'),
  {
    name: 'kept of a bake, all of it',
    async go(baker) {
      await baker.write('harbour day');
      await turned(baker, '.slab:visible');
      await turned(baker, '.slab:visible');
    },
  },
  to('kept of a bake, hidden', 'Hide this bake'),
  to('kept of a bake, erasing all', 'Erase for good'),
];
