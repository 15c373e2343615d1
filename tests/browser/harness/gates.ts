import { expect } from 'vitest';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { HOUR } from '../../../src/core/units.ts';
import { Hand } from '../../machines/support/hand.ts';
import { stepOn, walkTo } from '../../machines/support/onward.ts';
import { RECIPE, STONE } from '../../machines/support/recipe.ts';
import { Baker } from './baker.ts';
import { expectNoFaults } from './faults.ts';
import { openAt } from './hot-oven.ts';
import { START, type App } from './open-app.ts';
import { settled } from './settled.ts';
import type { Way } from './ways.ts';

/** In what ways each gate is looked at. */
export const GATE_WAYS = {
  bakes: ['one', 'two'],
  view: ['wide', 'small', 'tall'],
  text: ['plain', 'bigger'],
} as const;
type GateWay = Way<typeof GATE_WAYS>;

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

/** The gate that stands there, in one of its ways. */
const expectCaution = async (app: App, name: string, { view, text }: GateWay): Promise<void> => {
  await app.setViewport(view);
  await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
  await app.turn(50);
  await settled(app.page);
  const at = `gate-${name}-${view}-${text}`;
  if (process.env['SHOTS']) await app.screenshot(at);
  expect.soft(await hidden(app), at).toEqual([]);
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

interface Gate {
  readonly name: string;
  readonly stage: string;
  readonly recipe: Recipe;
  readonly walk: (hand: Hand) => Hand;
}
const gate = (name: string, stage: string, recipe: Recipe, walk = to(stage)): Gate => ({
  ...{ name, stage, recipe, walk },
});

/** Every gate there is before something hot or sharp. */
export const GATES: readonly Gate[] = [
  gate('turnOn', 'turnOn', RECIPE),
  gate('score', 'score', RECIPE),
  gate('load', 'load', RECIPE),
  gate('tray', 'tray', RECIPE, flat),
  gate('lift', 'lift', RECIPE),
  gate('judge', 'judge', RECIPE),
  gate('unload', 'unload', RECIPE),
  gate('load on a stone', 'load', STONE),
  gate('vent', 'vent', STONE),
];

/** Walks to a gate, beside another bake or by itself, and sees that its whole caution is in sight. */
export async function lookAtGate(
  { name, stage, recipe, walk }: Gate,
  ways: readonly GateWay[],
): Promise<void> {
  for (const bakes of GATE_WAYS.bakes) {
    const mine = ways.filter((way) => way.bakes === bakes);
    if (mine.length === 0) continue;
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
    await app.page.locator('.hold').waitFor();
    for (const way of mine) await expectCaution(app, `${name}-${bakes}`, way);
    expectNoFaults(app.faults);
    await app.close();
  }
}
