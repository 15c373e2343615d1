import { expect } from 'vitest';
import { Baker } from './baker.ts';
import { expectNoFaults } from './faults.ts';
import type { OtherTongue } from './in-tongue.ts';
import { lookAt, type LookedWay } from './look-at.ts';
import { openApp } from './open-app.ts';
import { checkSmall, WINDOWS } from './small-window.ts';
import { WHOLE_BAKE } from './whole-bake.ts';

/** One state of each kind: a wait, a card, a question, a look, a gate, a call, a verdict. */
const LOOKED_AT = [
  'read-list-4',
  'levain-feed-3',
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

/**
 * Walks a bake up to its first judged loaf and looks at one state of each kind, the nth in
 * `waysOf(n)`; every state also in the small windows. Gives how many were looked at.
 */
export async function lookWalk(
  waysOf: (n: number) => readonly LookedWay[],
  tongue?: OtherTongue,
): Promise<number> {
  const app = await openApp({ tongue });
  const baker = new Baker(app);
  let looked = 0;
  const look = async (name: string) => {
    await lookAt(app, name, waysOf(looked));
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
