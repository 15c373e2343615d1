import { expect } from 'vitest';
import { measure, type Measured } from './look.ts';
import type { App } from './open-app.ts';
import { paintedContrast, readPng, type Pixels } from './pixels.ts';

/** Contrast that words and outlines want. */
const WORDS = 7;
const EDGES = 3;
/** Pictures taken at most of one look. */
const TRIES = 3;

const isFaint = ({ words, edges }: Measured, picture: Pixels): boolean =>
  words.some((box) => paintedContrast(picture, box) < WORDS) ||
  edges.some((box) => paintedContrast(picture, box) < EDGES);

/**
 * What is measured of a page, and its picture, of one moment: a clip that ends takes its caption away by the
 * sound's own clock, and what stood under it moves up between the two.
 */
export async function lookOnce(
  app: App,
): Promise<{ readonly found: Measured; readonly picture: Pixels }> {
  for (let n = 1; ; n += 1) {
    const found = await measure(app);
    const picture = readPng(await app.page.screenshot());
    if (n === TRIES || !isFaint(found, picture)) return { found, picture };
    if (JSON.stringify(await measure(app)) === JSON.stringify(found)) return { found, picture };
  }
}

/** Words at 7:1 and outlines at 3:1, as they are painted. @throws where nothing was there to be held */
export function checkPainted(at: string, found: Measured, picture: Pixels): void {
  // A short sheet has its title and a word on each press.
  expect.soft(found.words.length, `${at}: words`).toBeGreaterThan(Math.min(3, found.edges.length));
  for (const box of found.words)
    expect.soft(paintedContrast(picture, box), `${at}: ${box.name}`).toBeGreaterThanOrEqual(WORDS);
  for (const box of found.edges)
    expect
      .soft(paintedContrast(picture, box), `${at}: edge of ${box.name}`)
      .toBeGreaterThanOrEqual(EDGES);
}
