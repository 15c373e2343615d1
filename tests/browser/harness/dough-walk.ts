import { expect } from 'vitest';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import { Baker } from './baker.ts';
import { beginBread } from './begin-bread.ts';
import { dress } from './look-at.ts';
import { actsOf, logOf } from './logged.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './open-app.ts';

/** How far the clock leaps at once while a call is waited for, minutes. */
const STEP = 20;
const THEMES = ['light', 'dark'] as const;

/** One dough walked by a baker who is new to all of it: what was shown, what was said, what the log holds. */
export class DoughWalk {
  private constructor(
    readonly app: App,
    readonly baker: Baker,
  ) {}

  /** Joins where the dough is, in a kitchen of so many degrees, and hears every word from then on. */
  static async begin(celsius: string, where: string, bread = 'Lane wheat'): Promise<DoughWalk> {
    const app = await openApp();
    await app.page.locator('.start-grid').waitFor();
    // As it is spoken it is captioned; a caption gives way to the next.
    await app.page.evaluate(() => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      const note = (): void => {
        const text = document.querySelector<HTMLElement>('.caption')?.textContent?.trim() ?? '';
        if (text !== '' && text !== heard.at(-1)) heard.push(text);
      };
      const all = { subtree: true, childList: true, characterData: true } as const;
      new MutationObserver(note).observe(document.body, all);
    });
    const baker = new Baker(app);
    await beginBread(baker, bread, where, 0, celsius);
    return new DoughWalk(app, baker);
  }

  /** What was said since this was last asked; sentences that still follow are waited for. */
  async said(): Promise<string> {
    await this.app.turn(12_000);
    return this.app.page.evaluate(() =>
      (window as unknown as { heard: string[] }).heard.splice(0).join(' '),
    );
  }

  text(selector: string): Promise<string> {
    return this.app.page
      .locator(selector)
      .first()
      .innerText()
      .then((text) => text.replace(/\s+/g, ' ').trim());
  }
  /** The sentence under the headline. */
  detail = (): Promise<string> => this.text('.act-detail');
  slabSays = (): Promise<string> => this.text('.slab');
  headline = (): Promise<string> => this.text('.act-headline');
  /** What may be answered beside the slab. */
  tiles = (): Promise<string[]> => this.app.page.locator('.tile').allInnerTexts();
  /** The running time's line: how long, and the hour it ends. */
  times = (): Promise<string> => this.text('.times');
  now = (): Promise<Instant> => this.app.page.evaluate(() => Date.now());

  /** The hours of the ready window as they are drawn, unlabelled ones too. */
  windowHours(): Promise<string[]> {
    return this.app.page.locator('.window-hours div:not([data-kind="now"]) dd').allInnerTexts();
  }

  /** The tablets on which the whole ready window is in sight, with nothing to read on to. */
  async windowInSight(): Promise<ViewportName[]> {
    const seen: ViewportName[] = [];
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await this.app.setViewport(view);
      await this.app.turn(50);
      const inSight = await this.app.page.evaluate(() => {
        const foot = (selector: string): number =>
          document.querySelector(selector)?.getBoundingClientRect().bottom ?? NaN;
        return foot('.window') <= foot('.bench-words');
      });
      if (inSight) seen.push(view);
    }
    await this.app.setViewport('wide');
    return seen;
  }

  /** The instants that the bake stands by, as the last fact's row holds them. */
  async marks(): Promise<Readonly<Record<string, Instant>>> {
    const [bake] = Object.values((await logOf(this.app)).at(-1)!.position.bakes);
    return bake!.marks;
  }

  /** The standing acts of the bake. */
  acts = async (): Promise<string[]> => actsOf(await logOf(this.app), 'bake-1');
  ovenActs = async (): Promise<string[]> => actsOf(await logOf(this.app), 'oven');

  /** A press that leaves exactly one fact, and leads to another headline. */
  async onePress(press: () => Promise<void>): Promise<void> {
    const before = await this.app.countRows();
    await this.baker.noted(press);
    expect(await this.app.countRows()).toBe(before + 1);
    await this.app.turn(700);
  }
  tile = (label: string): Promise<void> =>
    this.onePress(() => this.baker.tap(`.tile:has-text("${label}")`));
  slab = (): Promise<void> => this.onePress(() => this.baker.tap('.slab:not(.hold)'));
  control = (label: string): Promise<void> => this.onePress(() => this.baker.press(label));

  /** Takes the last act back; the call that it had ended rings again, and is hushed. */
  async takeBack(): Promise<void> {
    await this.baker.takeBack();
    await this.app.turn(700);
    if ((await this.app.page.locator('.call').count()) > 0) await this.baker.hush();
    await this.app.turn(700);
  }

  /** A new reading by pictures: its name, and what is pressed then. */
  async read(name: string, ...labels: readonly string[]): Promise<void> {
    await this.baker.press('New reading');
    await this.baker.press(name);
    for (const label of labels.slice(0, -1)) await this.baker.press(label);
    await this.baker.noted(() => this.baker.press(labels.at(-1)!));
  }

  /** Puts the card away that tells what happened meanwhile. */
  async backAgain(): Promise<void> {
    if ((await this.app.page.locator('.return').count()) > 0)
      await this.baker.press('I’ve read it');
  }

  /** Turns on, as long as nobody looks, until something calls; what it called for. */
  async untilCalled(mostMinutes: number): Promise<string> {
    for (let gone = 0; gone < mostMinutes; gone += STEP) {
      if ((await this.app.page.locator('.call').count()) > 0) break;
      await this.app.turn(STEP * MINUTE);
    }
    await this.app.page.locator('.call').waitFor();
    const called = await this.headline();
    await this.baker.hush();
    await this.backAgain();
    return called;
  }

  /** Nothing on the screen is half said; with SHOTS set it is photographed on every tablet, light and dark. */
  async see(name: string): Promise<void> {
    const words = await this.app.page.locator('body').innerText();
    expect(words, name).not.toMatch(/NaN|Invalid|undefined|null|\{\w+\}/);
    if (!process.env['SHOTS']) return;
    const plain = { hands: 'right', text: 'plain' } as const;
    for (const view of Object.keys(VIEWPORTS) as ViewportName[])
      for (const theme of THEMES) {
        await dress(this.app, { ...plain, view, theme });
        await this.app.screenshot(`dough-${name}-${view}-${theme}`);
      }
    await dress(this.app, { ...plain, view: 'wide', theme: 'light' });
  }
}

/** As the bench writes it. */
export const hour = (at: Instant): string => new Date(at).toISOString().slice(11, 16);
