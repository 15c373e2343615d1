import { expect, it } from 'vitest';
import { HOUR } from '../../src/core/units.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { check, measure, MM } from './harness/look.ts';
import { openApp, type App } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

/** Presses of the page that no finger comes to where they stand: out of sight, in part, or under something. */
const unseen = async (app: App): Promise<readonly string[]> => {
  await settled(app.page);
  return app.page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.bench button')]
      .filter((el) => {
        const { left, top, right, bottom } = el.getBoundingClientRect();
        const words = el.closest('.bench-words')?.getBoundingClientRect();
        const [head, foot] = [words?.top ?? 0, words?.bottom ?? innerHeight];
        const whole = top >= head - 1 && bottom <= foot + 1 && left >= 0 && right <= innerWidth;
        return (
          !whole || !el.contains(document.elementFromPoint((left + right) / 2, (top + bottom) / 2))
        );
      })
      .map((el) => el.textContent),
  );
};

it('has every press of the start page in sight beside the starter’s notice, on a tall tablet', async () => {
  const app = await openApp({ viewport: 'tall' });
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await baker.press('Starter');
  await baker.press('I fed it');
  await baker.key('24');
  await baker.tap('.slab');
  await baker.noted(() => baker.tap('.tile:has-text("1:2:2")'));
  await app.page.locator('.act-detail:has-text("Ripe between")').waitFor();
  for (let n = 0; n < 2; n++) await baker.tap('.slab');
  await app.page.locator('.start-grid').waitFor();
  await app.turn(30 * HOUR);
  await baker.noted(() => baker.press('See to it'));
  await app.page.locator('.notice > .control').waitFor();
  const look = async (name: string): Promise<void> => {
    for (const text of ['plain', 'bigger'])
      for (const hands of ['right', 'left']) {
        await app.page.evaluate(
          ([t, h]) => Object.assign(document.documentElement.dataset, { text: t, hands: h }),
          [text, hands],
        );
        await app.turn(50);
        const missed = await unseen(app);
        await app.screenshot(`start-notice-${name}-${text}-${hands}`);
        expect.soft(missed, `${name}, ${text}, ${hands}`).toEqual([]);
        const found = await measure(app);
        check(`${name}, ${text}, ${hands}`, MM.tall!, text === 'bigger' ? 1.4 : 1, found);
      }
    await app.page.evaluate(() =>
      Object.assign(document.documentElement.dataset, { text: 'plain', hands: 'right' }),
    );
  };
  await look('asked');
  // What is chosen may be longer than what stands there first.
  await baker.press('Where is your dough?');
  await baker.press('My dough is in the bowl');
  await baker.press('How warm is the kitchen?');
  await baker.key('22.5');
  await baker.tap('.slab');
  await look('chosen');
  expectNoFaults(app.faults);
});
