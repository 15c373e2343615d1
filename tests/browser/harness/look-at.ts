import { expect } from 'vitest';
import { barsAlone } from './bar-alone.ts';
import { captionCovers } from './caption.ts';
import { check, MM } from './look.ts';
import type { App } from './open-app.ts';
import { checkPainted, lookOnce } from './painted.ts';
import { parted } from './parted.ts';
import { settled } from './settled.ts';
import type { Way } from './ways.ts';

/** In what ways each state is looked at. */
export const WAYS = {
  view: ['wide', 'small', 'tall'],
  theme: ['light', 'dark'],
  hands: ['right', 'left'],
  text: ['plain', 'bigger'],
} as const;
export type LookedWay = Way<typeof WAYS>;

export async function dress(app: App, { view, theme, hands, text }: LookedWay): Promise<void> {
  await app.setViewport(view);
  const put = () =>
    app.page.evaluate((ways) => Object.assign(document.documentElement.dataset, ways), {
      theme,
      hands,
      text,
    });
  await put();
  await app.turn(50);
  // What the page puts off until a frame comes with the clock's next turn, however late the frame was.
  await settled(app.page);
  await app.turn(50);
  // Once a minute of its clock the app writes its own ways there.
  await put();
}

/** Looks at what stands on the screen in each of these ways, and dresses it plain again. */
export async function lookAt(app: App, name: string, ways: readonly LookedWay[]): Promise<void> {
  for (const way of ways) {
    const at = `${name}, ${Object.values(way).join(', ')}`;
    await dress(app, way);
    const { found, picture } = await lookOnce(app);
    if (process.env['SHOTS']) await app.screenshot(`look-${at.replace(/[^a-z0-9]+/gi, '-')}`);
    check(at, MM[way.view], way.text === 'bigger' ? 1.4 : 1, found, app.lang);
    checkPainted(at, found, picture);
    expect.soft(await captionCovers(app.page), `${at}: under the caption`).toEqual([]);
    expect.soft(await parted(app.page), `${at}: parted without a hyphen`).toEqual([]);
    expect.soft(await barsAlone(app.page), `${at}: a bar alone`).toEqual([]);
    expect.soft(await app.axe(), `axe: ${at}`).toEqual([]);
  }
  await dress(app, { view: 'wide', theme: 'light', hands: 'right', text: 'plain' });
}
