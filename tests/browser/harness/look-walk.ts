import { expect } from 'vitest';
import { Baker } from './baker.ts';
import { expectNoFaults } from './faults.ts';
import { check, checkPainted, measure, MM } from './look.ts';
import { openApp, type App } from './open-app.ts';
import { readPng } from './pixels.ts';
import { checkSmall, WINDOWS } from './small-window.ts';
import type { Way } from './ways.ts';
import { WHOLE_BAKE } from './whole-bake.ts';

/** In what ways each state is looked at. */
export const WAYS = {
  view: ['wide', 'small', 'tall'],
  theme: ['light', 'dark'],
  hands: ['right', 'left'],
  text: ['plain', 'bigger'],
} as const;
export type LookedWay = Way<typeof WAYS>;

/** One state of each kind: a wait, a card, a question, a look, a gate, a call, a verdict. */
const LOOKED_AT = [
  'read-list-4',
  'levain-feed-1',
  'levain-ripening',
  'levain-look-1',
  'levain-verdict',
  'mix-temperature',
  'bulk-between-1',
  'shape-divide',
  'proof-retard',
  'oven-on',
  'load1-before-1',
  'load1-lidded',
  'load1-lift',
  'load1-judge-1',
];
const RINGING = ['levain-ripening', 'mix-rest', 'load1-lidded'];

async function dress(app: App, { view, theme, hands, text }: LookedWay): Promise<void> {
  await app.setViewport(view);
  await app.page.evaluate((ways) => Object.assign(document.documentElement.dataset, ways), {
    theme,
    hands,
    text,
  });
  await app.turn(50);
}

/**
 * Walks a bake up to its first judged loaf and looks at one state of each kind, the nth in
 * `waysOf(n)`; every state also in the small windows. Gives how many were looked at.
 */
export async function lookWalk(waysOf: (n: number) => readonly LookedWay[]): Promise<number> {
  const app = await openApp();
  const baker = new Baker(app);
  let looked = 0;
  const look = async (name: string) => {
    for (const way of waysOf(looked)) {
      const at = `${name}, ${Object.values(way).join(', ')}`;
      await dress(app, way);
      const found = await measure(app);
      check(at, MM[way.view], way.text === 'bigger' ? 1.4 : 1, found);
      checkPainted(at, found, readPng(await app.page.screenshot()));
      expect.soft(await app.axe(), `axe: ${at}`).toEqual([]);
    }
    await dress(app, { view: 'wide', theme: 'light', hands: 'right', text: 'plain' });
    for (const size of WINDOWS)
      await checkSmall(app, `${name}, ${size.width} × ${size.height}`, size);
    await app.setViewport('wide');
    looked += 1;
  };
  await baker.begin();
  for (const { name, go } of WHOLE_BAKE) {
    if (LOOKED_AT.includes(name)) await look(name);
    if (name === 'mix-temperature') {
      await baker.tap('.slab');
      await app.page.locator('.pad').waitFor();
      await look('the keypad, blank');
      expect(await app.page.locator('.pad-typed').innerText(), 'nothing is filled in').toBe('');
      await baker.press('Back to the bench');
    }
    await go(baker, RINGING.includes(name) ? () => look(`${name}, ringing`) : undefined);
    if (name === 'load1-judge-1') break;
  }
  expectNoFaults(app.faults);
  expect(looked).toBe(LOOKED_AT.length + RINGING.length + 1);
  return looked;
}
