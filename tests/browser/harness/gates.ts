import { expect, it } from 'vitest';
import { HOUR } from '../../src/core/units.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn, walkTo } from '../machines/support/onward.ts';
import { RECIPE, STONE } from '../machines/support/recipe.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openAt } from './harness/hot-oven.ts';
import { START, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

/** Lines of a gate's caution that are not whole in sight: cut by their place, or under what lies over it. */
const hidden = (app: App) =>
  app.page.evaluate(() => {
    const words = document.querySelector('.bench-words')!;
    const place = words.getBoundingClientRect();
    const over = [...document.querySelectorAll('.bench-further > *, .caption, .notice')]
      .map((el) => el.getBoundingClientRect())
      .filter(({ height }) => height > 0);
    const lines = [...words.querySelectorAll('.act-headline, .act-detail')].flatMap((el) => {
      const range = document.createRange();
      range.selectNodeContents(el);
      return [...range.getClientRects()].map((line) => ({ line, text: el.textContent ?? '' }));
    });
    // A line's box reaches a little past its letters.
    const out = lines.filter(
      ({ line }) =>
        line.top < place.top - 3 ||
        line.bottom > place.bottom + 4 ||
        over.some(
          (box) =>
            box.left < line.right - 1 &&
            box.right > line.left + 1 &&
            box.top < line.bottom - 0.2 * line.height &&
            box.bottom > line.top + 0.2 * line.height,
        ),
    );
    return [lines.length > 2 ? '' : 'no caution', ...out.map(({ text }) => text)].filter(Boolean);
  });

/** The gate that stands there, in every viewport and in words of either size. */
const expectCaution = async (app: App, name: string): Promise<void> => {
  await app.page.locator('.hold').waitFor();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[])
    for (const text of ['usual', 'bigger']) {
      await app.setViewport(view);
      await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
      await app.turn(50);
      await settled(app.page);
      await app.screenshot(`gate-${name}-${view}-${text}`);
      expect.soft(await hidden(app), `${name}, ${view}, ${text}`).toEqual([]);
    }
  expectNoFaults(app.faults);
};

const flat = (hand: Hand): Hand => {
  walkTo(hand, 'oven', 'poke');
  hand.press('oven', 'pokeFlat');
  stepOn(hand, 'oven');
  return hand;
};
const to =
  (stage: string) =>
  (hand: Hand): Hand =>
    walkTo(hand, 'oven', stage);

it.each([
  ['turnOn', RECIPE, to('turnOn')],
  ['score', RECIPE, to('score')],
  ['load', RECIPE, to('load')],
  ['tray', RECIPE, flat],
  ['lift', RECIPE, to('lift')],
  ['judge', RECIPE, to('judge')],
  ['unload', RECIPE, to('unload')],
  ['load', STONE, to('load')],
  ['vent', STONE, to('vent')],
])(
  'shows the whole caution of the gate to %s without a press',
  async (stage, recipe, walk) => {
    for (const bakes of ['one', 'two']) {
      const hand = new Hand({ now: START - 12 * HOUR });
      if (bakes === 'two') hand.start('b', 'mix.first', ['b1', 'b2']);
      hand.start('a', 'oven.queued', ['a1', 'a2'], recipe);
      walk(hand);
      expect(hand.stage('oven')).toBe(stage);
      const app = await openAt(hand);
      const baker = new Baker(app);
      if ((await app.page.locator('.call').count()) > 0) await baker.hush();
      if ((await app.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
      if ((await app.page.locator('.hold').count()) === 0) await baker.press('Cherry');
      await expectCaution(app, `${recipe === STONE ? 'stone-' : ''}${stage}-${bakes}`);
      await app.close();
    }
  },
  180_000,
);
