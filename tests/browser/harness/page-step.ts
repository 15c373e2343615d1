import { vi } from 'vitest';
import type { Baker } from './baker.ts';

/** A page beside the act, and the way to it from the one before. */
export interface PageStep {
  readonly name: string;
  readonly go: (baker: Baker) => Promise<void>;
}

/** Of two such words the upper sheet's: it comes last. */
export const last = (label: string): string => `button:not(.slab):has-text("${label}") >> nth=-1`;
/** What may be pressed, what is asked and what was keyed: a running time is none of it. */
const faceOf = (baker: Baker): Promise<string> =>
  baker.page.evaluate(() =>
    [...document.querySelectorAll('button, h1, .sheet, .pad-typed')]
      .map((el) => `${el.textContent} ${el.getAttribute('aria-pressed')} ${el.className}`)
      .join('\n'),
  );
/** A tap that leads to another page: its chunk may be long in coming. */
export const turned = async (baker: Baker, selector: string): Promise<void> => {
  const before = await faceOf(baker);
  await baker.tap(selector);
  await vi.waitFor(
    async () => {
      const now = await faceOf(baker);
      // Nothing at all: the page's script is still on its way.
      if (now === before || now === '') throw new Error(`${selector} has changed nothing.`);
    },
    { timeout: 20_000, interval: 20 },
  );
};
export const press = async (baker: Baker, labels: readonly string[]): Promise<void> => {
  for (const label of labels) await turned(baker, last(label));
};
export const to = (name: string, ...labels: readonly string[]): PageStep => ({
  name,
  go: (baker) => press(baker, labels),
});
/** Back by so many slabs, and on from there. */
export const back = (name: string, slabs: number, ...labels: readonly string[]): PageStep => ({
  name,
  async go(baker) {
    for (let n = 0; n < slabs; n++) await turned(baker, '.slab:visible');
    await press(baker, labels);
  },
});
export const keyed = (name: string, digits: string): PageStep => ({
  name,
  go: (baker) => baker.key(digits),
});
