import { vi } from 'vitest';
import type { App } from './open-app.ts';

/** A beat between two presses of one hand: dead time over, the new control armed. */
const BEAT = 1_100;

/** A baker at the tablet, with single taps and a clock that the test turns. */
export class Baker {
  constructor(readonly app: App) {}

  get page() {
    return this.app.page;
  }

  /** Facts in the store. */
  async facts(): Promise<{ kind: string; who?: string; act?: string; item?: string }[]> {
    const rows = (await this.app.storeRows()) as { fact: { kind: string } }[];
    return rows.map((row) => row.fact);
  }

  headline(): Promise<string> {
    return this.page.locator('.act-headline').first().innerText();
  }

  async tap(selector: string): Promise<void> {
    const wanted = this.page.locator(selector).first();
    // It may still be on its way: the beat that arms it begins when it is there.
    await wanted.waitFor();
    await this.beat();
    // Big keys lie over all else until they are done with.
    const done = '.letters-done button';
    const under = async (): Promise<boolean> =>
      !(await wanted.evaluate((el) => el.closest('.sheet:has(.letters)') !== null));
    if ((await this.page.locator(done).count()) > 0 && (await under())) {
      await this.tapNow(done);
      await this.beat();
    }
    await this.tapNow(selector);
  }

  /** A beat between two presses: the dead time is over and what came is armed. */
  beat(): Promise<void> {
    return this.app.turn(BEAT);
  }

  /** A tap in the very instant: nothing can have come since the screen was read. */
  async tapNow(selector: string): Promise<void> {
    const wanted = this.page.locator(selector).first();
    // Straight onto the glass where nothing lies over it; else as a hand that looks for it.
    const middle = await wanted.evaluate((el) => {
      const { left, right, top, bottom } = el.getBoundingClientRect();
      const [x, y] = [(left + right) / 2, (top + bottom) / 2];
      return el.contains(document.elementFromPoint(x, y)) ? { x, y } : null;
    });
    if (middle) await this.page.touchscreen.tap(middle.x, middle.y);
    else await wanted.tap();
  }

  /** A tap that must leave one fact more in the store. */
  async noted(tap: () => Promise<void>): Promise<void> {
    const before = await this.app.countRows();
    await tap();
    // A loaded machine may be long about it; what never comes is a failure all the same.
    const come = async (): Promise<void> => {
      if ((await this.app.countRows()) <= before) throw new Error('No fact yet.');
    };
    await vi.waitFor(come, { timeout: 20_000, interval: 10 }).catch(async () => {
      throw new Error(await this.missed());
    });
    await this.app.turn(70);
  }

  /**
   * What became of a tap without a fact. What was taken and only not written yet is shown once a quarter
   * of a second has passed: then the disk is slow. Else the press was never taken.
   */
  private async missed(): Promise<string> {
    const tell = async () =>
      `“${await this.headline()}”, “${await this.page.locator('.caption').innerText()}”`;
    const before = await tell();
    await this.app.turn(300);
    return `No fact after a tap; then: ${before}; 0.3 s later: ${await tell()}.`;
  }

  slab(): Promise<void> {
    return this.noted(() => this.tap('.slab:not(.hold)'));
  }

  /** A control or tile by what is written on it. */
  press(label: string): Promise<void> {
    return this.tap(`button:has-text("${label}")`);
  }

  answer(label: string): Promise<void> {
    return this.noted(() => this.tap(`.tile:has-text("${label}")`));
  }

  takeBack(): Promise<void> {
    return this.noted(() => this.press('Take that back'));
  }

  /** While it rings, the first touch anywhere only silences it. */
  hush(): Promise<void> {
    return this.noted(async () => {
      await this.app.turn(BEAT);
      await this.page.locator('.act-headline').first().tap();
    });
  }

  async key(digits: string): Promise<void> {
    for (const digit of digits) await this.tap(`.key:text-is("${digit}")`);
  }

  /** Words from a keyboard that is plugged in; keys that stand there are put away. */
  async write(text: string): Promise<void> {
    await this.page.locator('.typed-text').fill(text);
    if ((await this.page.locator('.letters').count()) > 0) await this.tap('.letters-done button');
  }

  /** Words by the big keys alone; what is not on the page that stands is on the other one. */
  async spell(text: string): Promise<void> {
    for (const sign of text) {
      const key = sign === ' ' ? '.key-blank' : `.letters-keys .key:text-is("${sign}")`;
      if ((await this.page.locator(key).count()) === 0) await this.tap('.key-page');
      await this.tap(key);
    }
  }

  /** Holds the gate open for so long. */
  async hold(ms = 1_300): Promise<void> {
    await this.beat();
    await this.holdNow(ms);
  }

  /** The same in the very instant. */
  async holdNow(ms = 1_300): Promise<void> {
    const box = await this.page.locator('.hold').boundingBox();
    if (!box) throw new Error('There is no gate to hold.');
    await this.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await this.page.mouse.down();
    await this.app.turn(ms);
    await this.page.mouse.up();
    await this.app.turn(50);
  }

  /** Opens the gate where one stands. */
  async openGate(): Promise<void> {
    if ((await this.page.locator('.hold').count()) > 0) await this.hold();
  }

  /** From a bench to the start page; its bake goes on. */
  async toStart(): Promise<void> {
    await this.press('More');
    await this.press('To the start');
    await this.page.locator('.start-grid').waitFor();
  }

  /** From the start page to the read-through of two loaves, of the first bread or the named one. */
  async begin(celsius = '22', bread?: string): Promise<void> {
    await this.page.locator('.start-grid').waitFor();
    if (bread !== undefined) {
      await this.press('Which bread?');
      await this.press(bread);
    }
    await this.press('How warm is the kitchen?');
    await this.key(celsius);
    await this.tap('.slab');
    await this.startBaking();
  }

  /** The start page's slab; a tablet whose sound was never checked is told to go by sight only. */
  async startBaking(): Promise<void> {
    await this.noted(async () => {
      const first = await this.page.locator('.slab:has-text("sound check")').count();
      await this.tap('.slab');
      if (first === 0) return;
      await this.tap('.bench:has(.sound-calls) .control:has-text("Sight only")');
      await this.tap('.slab:has-text("Start baking")');
    });
    await this.page.locator('.bench[aria-label="Bench"] .act-headline').first().waitFor();
  }

  /** Turns the clock and hushes whatever rings then. */
  async wait(minutes: number, rung?: () => Promise<void>): Promise<void> {
    await this.app.turn(minutes * 60_000);
    if ((await this.page.locator('.call').count()) > 0) {
      await rung?.();
      await this.hush();
    }
    if ((await this.page.locator('.return').count()) > 0) await this.press('I’ve read it');
  }
}
