import type { Page } from 'playwright-core';
import { bounded } from './bounded.ts';

/** What two frames and a font may take, ms, before the page is drawn by force. */
const PATIENCE = 5_000;

/**
 * Waits for the fonts and for two real frames, whatever the page's clock says: after them nothing is
 * laid out anew. A page that nobody draws gives no frames: a photograph has it drawn.
 */
export async function settled(page: Page): Promise<void> {
  for (let tries = 0; ; tries++) {
    const drawn = page.evaluate(async () => {
      await document.fonts.ready;
      for (let n = 0; n < 2; n++)
        await new Promise((then) => new ResizeObserver(then).observe(document.body));
    });
    try {
      return await bounded('fonts and two frames', drawn, PATIENCE);
    } catch (e) {
      if (tries === 2) throw e;
      await page.screenshot();
    }
  }
}
