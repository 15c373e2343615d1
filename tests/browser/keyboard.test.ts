import { expect, it } from 'vitest';
import { expectNoFaults } from './harness/faults.ts';
import { KeyBaker } from './harness/key-baker.ts';
import { openApp } from './harness/open-app.ts';
import { ShownWords } from './harness/shown-words.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

it('walks a whole bake by keyboard alone, in few and plain words', async () => {
  const app = await openApp();
  const baker = new KeyBaker(app);
  await baker.begin();
  const order: string[][] = [];
  const words = new ShownWords();
  for (const { name, go } of WHOLE_BAKE) {
    if (name === 'levain-feed-1') {
      // Tab goes round the screen as it is read: the act's slab, the controls, the ear.
      const round: string[] = [];
      for (let n = 0; n < 5; n++) {
        await app.page.keyboard.press('Tab');
        round.push(await app.page.evaluate(() => document.activeElement?.textContent ?? ''));
      }
      order.push(round);
      while (!(await app.page.evaluate(() => document.activeElement?.matches('.slab'))))
        await app.page.keyboard.press('Tab');
    }
    await words.read(app, name);
    await go(baker);
  }
  words.check();
  expect(order[0]?.slice(0, 2)).toEqual(['Take that back', 'Say that again']);
  // The first screens have no act before them; from then on the focus comes along by itself.
  expect(baker.came.sought, `${baker.came.ready} came`).toBeLessThanOrEqual(2);
  expect((await baker.facts()).at(-1)?.act).toBe('noted');
  expectNoFaults(app.faults);
});
