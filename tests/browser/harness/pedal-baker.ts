import { Baker } from './baker.ts';

/** As many as there can be on one screen, and one round more. */
const MOST_STEPS = 40;

/** The same baker with two pedals, one that says *that's done* and one for the next answer; gates by hand. */
export class PedalBaker extends Baker {
  static readonly KEYS = { done: 'PageDown', next: 'PageUp', takeBack: 'b' } as const;

  step(pedal: keyof typeof PedalBaker.KEYS): Promise<void> {
    return this.page.keyboard.press(PedalBaker.KEYS[pedal]);
  }

  override async tap(selector: string): Promise<void> {
    const wanted = this.page.locator(selector).first();
    await wanted.waitFor();
    await this.beat();
    const here = (): Promise<boolean> => wanted.evaluate((el) => document.activeElement === el);
    // The slab is what a pedal presses unless something else was chosen: a digit, say.
    if (!selector.startsWith('.slab') || (await this.page.locator('.key:focus').count()) > 0) {
      for (let n = 0; !(await here()); n += 1) {
        if (n === MOST_STEPS) throw new Error(`The pedal does not come to ${selector}.`);
        await this.step('next');
        await this.app.turn(300);
      }
    }
    await this.step('done');
  }

  override hush(): Promise<void> {
    return this.noted(async () => {
      await this.beat();
      await this.step('done');
    });
  }
}
