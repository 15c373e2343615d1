import type { Baker } from './baker.ts';

/** Begins a bread of so many loaves where its dough is, from the start page, warmth keyed in. */
export async function beginBread(
  baker: Baker,
  bread: string,
  where: string,
  more = 0,
  celsius = '22',
): Promise<void> {
  await baker.press('Which bread?');
  await baker.press(bread);
  await baker.press('How many loaves?');
  for (let n = 0; n < more; n++) await baker.tap('[aria-label^="One more"]');
  await baker.tap('.slab');
  await baker.press('How warm is the kitchen?');
  await baker.key(celsius);
  await baker.tap('.slab');
  await baker.press('Where is your dough?');
  await baker.press(where);
  await baker.startBaking();
}
