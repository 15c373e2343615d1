import type { CDPSession } from 'playwright-core';
import { expect } from 'vitest';
import type { ViewportName } from './open-app.ts';
import { openParts } from './open-parts.ts';

/** mm a CSS px of the three tablets. */
const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };

/** Chance with a seed (mulberry32), so that a miss can be found again. */
function chance(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}
/** Around 0 with deviation 1 (Box–Muller). */
const around = (next: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly radiusX: number;
  readonly radiusY: number;
  readonly id: number;
}

/**
 * One knuckle, two, a fist of three or an elbow: contacts of 10 to 14 mm radius, 16 mm apart in a line,
 * scattered by 8 mm around where they aim, rolled up to 4 mm before they lift.
 */
function aim(next: () => number, at: { x: number; y: number }, mm: number) {
  const hands = 1 + Math.floor(next() * 3);
  const [dx, dy] = [around(next) * 8, around(next) * 8];
  const roll = { x: (next() - 0.5) * 8, y: (next() - 0.5) * 8 };
  const spots = (rolled: number): Spot[] =>
    Array.from({ length: hands }, (_, i) => ({
      x: at.x + (dx + (i - (hands - 1) / 2) * 16 + rolled * roll.x) / mm,
      y: at.y + (dy + rolled * roll.y) / mm,
      radiusX: (10 + next() * 4) / mm,
      radiusY: (10 + next() * 4) / mm,
      id: i,
    }));
  return { down: spots(0), rolled: spots(1) };
}

async function press(cdp: CDPSession, { down, rolled }: ReturnType<typeof aim>): Promise<void> {
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: Spot[]) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', down);
  await send('touchMove', rolled);
  await send('touchEnd', []);
}

/**
 * Presses the slab of the parts' page `presses` times with a knuckle, a third on each tablet, and holds
 * that 98 % are taken, none twice, and that nothing else is pressed.
 */
export async function expectKnuckle(presses: number): Promise<void> {
  const parts = await openParts();
  const cdp = await parts.page.context().newCDPSession(parts.page);
  const next = chance(20260306);
  const read = () => parts.page.evaluate(() => ({ ...document.documentElement.dataset }));
  const missed: string[] = [];
  const twice: string[] = [];
  const strange: string[] = [];
  let made = 0;
  for (const view of ['wide', 'small', 'tall'] as const) {
    const count = Math.ceil((presses - made) / { wide: 3, small: 2, tall: 1 }[view]);
    await parts.show('act', view);
    const box = await parts.page.locator('.slab').boundingBox();
    const at = { x: box!.x + box!.width / 2, y: box!.y + box!.height / 2 };
    let before = Number((await read())['slab'] ?? 0);
    for (let n = 0; n < count; n++) {
      const knuckle = aim(next, at, MM[view]);
      await press(cdp, knuckle);
      // Every fourth bounces: the same again before the dead time is over.
      if (n % 4 === 0) {
        await parts.turn(150);
        await press(cdp, knuckle);
      }
      await parts.turn(1_100);
      made += 1;
      const { slab, ...others } = await read();
      const taken = Number(slab ?? 0) - before;
      before = Number(slab ?? 0);
      const what = `${view} ${n}: ${JSON.stringify(knuckle.down.map(({ x, y }) => [Math.round(x - at.x), Math.round(y - at.y)]))}`;
      if (taken === 0) missed.push(what);
      if (taken > 1) twice.push(what);
      if (others['back'] || others['again'] || others['last'] || others['more']) strange.push(what);
    }
  }
  expect(made).toBe(presses);
  expect(strange, 'something else was pressed').toEqual([]);
  expect(twice, 'taken twice').toEqual([]);
  expect(missed.length, missed.join('\n')).toBeLessThanOrEqual(presses * 0.02);
}
