import { expect } from 'vitest';
import { Baker } from './baker.ts';

/** As many as there can be on one screen, and one round more. */
const MOST_TABS = 40;

/** The same baker with a keyboard and nothing else: Tab, Enter, Space, digits. */
export class KeyBaker extends Baker {
  /** How often a slab was where the focus already stood, and how often it had to be looked for. */
  readonly came = { ready: 0, sought: 0 };

  /** Where the focus is: seen by eyes, in the window, and inside what the selector finds. */
  private async stands(selector: string): Promise<boolean> {
    const wanted = await this.page.locator(selector).first().elementHandle();
    return this.page.evaluate((el) => el !== null && document.activeElement === el, wanted);
  }

  private async expectSeen(): Promise<void> {
    const seen = await this.page.evaluate(() => {
      const el = document.activeElement!;
      const { left, top, right, bottom } = el.getBoundingClientRect();
      const inside = left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight;
      // The ring is the outline drawn thicker, inside the clip: what is not pressable has its own.
      const edge = parseFloat(getComputedStyle(el, '::before').top);
      return { visible: el.matches(':focus-visible'), inside, edge };
    });
    expect(seen).toMatchObject({ visible: true, inside: true });
    expect(seen.edge, 'the ring in px').toBeGreaterThanOrEqual(5);
  }

  override async tap(selector: string): Promise<void> {
    await this.page.locator(selector).first().waitFor();
    await this.app.turn(1_100);
    let tabs = 0;
    while (!(await this.stands(selector))) {
      if (tabs++ === MOST_TABS) throw new Error(`Tab does not come to ${selector}.`);
      await this.page.keyboard.press('Tab');
    }
    if (selector.startsWith('.slab')) this.came[tabs === 0 ? 'ready' : 'sought'] += 1;
    await this.expectSeen();
    await this.page.keyboard.press(this.came.ready % 2 === 0 ? 'Enter' : 'Space');
  }

  override async key(digits: string): Promise<void> {
    await this.page.locator('.pad').waitFor();
    for (const digit of digits) await this.page.keyboard.press(digit);
  }

  override hush(): Promise<void> {
    return this.noted(async () => {
      await this.app.turn(1_100);
      await this.page.keyboard.press('Enter');
    });
  }

  override async hold(ms = 1_300): Promise<void> {
    await this.app.turn(1_100);
    const at = await this.page.evaluate(() => document.activeElement?.outerHTML.slice(0, 80));
    expect(
      await this.stands('.hold'),
      `${await this.headline()}: the focus is on the gate, not on ${at}`,
    ).toBe(true);
    await this.page.keyboard.down('Space');
    await this.app.turn(ms);
    await this.page.keyboard.up('Space');
    await this.app.turn(50);
  }
}
