import type { App } from './open-app.ts';
import { luminance, readPng, type Pixels } from './pixels.ts';

/** Frames over one second of the page's clock, and the squares of the screen they are compared by. */
const FRAMES = 14;
const CELL = 32;
/** Pixels of a cell that are looked at, each way. */
const STEP = 8;
/** Relative luminance by which a cell has changed: a tenth is a flash (WCAG 2.3.1), a line of text far less. */
const CHANGE = 0.01;

const lightsOf = (picture: Pixels): number[] => {
  const lights: number[] = [];
  for (let y = 0; y < picture.height; y += CELL)
    for (let x = 0; x < picture.width; x += CELL) {
      let [sum, count] = [0, 0];
      for (let dy = 0; dy < CELL && y + dy < picture.height; dy += STEP)
        for (let dx = 0; dx < CELL && x + dx < picture.width; dx += STEP) {
          sum += luminance(picture.at(x + dx, y + dy));
          count += 1;
        }
      lights.push(sum / count);
    }
  return lights;
};

export interface Changes {
  /** How often the most restless square of the whole screen changes within one second. */
  readonly anywhere: number;
  /** And the most restless of those that hold the words asked about. */
  readonly words: number;
}

export async function changesASecond(app: App, words: string): Promise<Changes> {
  const boxes = await app.page.locator(words).evaluateAll((all) =>
    all.map((el) => {
      const { left, top, right, bottom } = el.getBoundingClientRect();
      return { left, top, right, bottom };
    }),
  );
  if (boxes.length === 0) throw new Error(`No words there: ${words}.`);
  const frames: number[][] = [];
  let columns = 0;
  for (let n = 0; n <= FRAMES; n += 1) {
    if (n > 0) await app.context.clock.runFor(1_000 / FRAMES);
    const picture = readPng(await app.page.screenshot());
    columns = Math.ceil(picture.width / CELL);
    frames.push(lightsOf(picture));
  }
  const changes = frames[0]!.map(
    (_, cell) =>
      frames.slice(1).filter((frame, n) => Math.abs(frame[cell]! - frames[n]![cell]!) > CHANGE)
        .length,
  );
  const holdsWords = (_: number, cell: number): boolean => {
    const [x, y] = [(cell % columns) * CELL, Math.floor(cell / columns) * CELL];
    return boxes.some(
      ({ left, top, right, bottom }) =>
        x < right && x + CELL > left && y < bottom && y + CELL > top,
    );
  };
  return {
    anywhere: Math.max(...changes),
    words: Math.max(...changes.filter(holdsWords)),
  };
}
