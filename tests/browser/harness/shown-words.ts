import { expect } from 'vitest';
import { sentencesOf, wordsOf } from '../../core/speech/support/catalogue.ts';
import { grade } from '../../core/speech/support/grade.ts';
import type { App } from './open-app.ts';

/** Most words of a headline and of a sentence under it, and most presses beside the slab. */
const MOST = { headline: 7, detail: 12, presses: 6 };
/** The school grade that all of it together may ask for. */
const GRADE = 6;

/** What an act says on the glass, gathered from the screens of a bake. */
export class ShownWords {
  readonly #seen = new Set<string>();

  /** Reads the act that stands there, and holds its words to their number. */
  async read(app: App, at: string): Promise<void> {
    const found = await app.page.evaluate(() => {
      const texts = (css: string) =>
        [...document.querySelectorAll<HTMLElement>(css)]
          .filter((el) => el.checkVisibility())
          .map((el) => el.innerText.replaceAll('\u00a0', ' '));
      return {
        headlines: texts('.bench-words .act-headline'),
        details: texts('.bench-words .act-detail'),
        presses: texts('.bench-controls .control'),
      };
    });
    expect.soft(found.headlines.length, `${at}: a headline`).toBe(1);
    for (const headline of found.headlines)
      expect.soft(wordsOf(headline).length, headline).toBeLessThanOrEqual(MOST.headline);
    for (const sentence of found.details.flatMap(sentencesOf))
      expect.soft(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(MOST.detail);
    expect.soft(found.presses.length, `${at}: presses`).toBeLessThanOrEqual(MOST.presses);
    for (const text of [...found.headlines, ...found.details]) this.#seen.add(text);
  }

  /** All of them together are plain enough. */
  check(): void {
    const texts = [...this.#seen];
    expect(texts.length).toBeGreaterThan(20);
    expect(grade(texts)).toBeLessThanOrEqual(GRADE);
  }
}
