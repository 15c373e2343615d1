import { NEXT_KEY_MS, SETTLE_MS } from '../../../machines/listening/listening.ts';
import type { EarPhrase } from '../../../src/core/ear/phrases.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { Baker } from './baker.ts';
import type { Screen } from './screen.ts';
import { nameOf, Walker } from './walker.ts';

/** What a baker with a voice asks of the kitchen around. */
export interface Kitchen {
  /** These phrases one after the other, as they sound in it; none: its noise alone. */
  sound(phrases: readonly EarPhrase[]): Promise<Float32Array>;
  put(sound: Float32Array): Promise<void>;
}

/** So long somebody waits for an answer before they say it again, real ms. */
const PATIENCE = 8_000;
const LOOK_EVERY = 50;
const MOST_TIMES = 4;

/** A voice keys 25 °C. */
const READING: readonly EarPhrase[] = ['two', 'five'];

/** A baker who says what may be said, and presses by hand what only a hand may. */
export class VoiceWalker extends Walker {
  /** Acts by voice, and by hand with the headlines they stood under. */
  readonly spoken: string[] = [];
  readonly byHand: string[] = [];
  /** How often something was said once more. */
  again = 0;

  constructor(
    baker: Baker,
    readonly kitchen: Kitchen,
  ) {
    super(baker, { takeBack: [], reload: [] });
  }

  private async until(done: () => Promise<boolean>): Promise<boolean> {
    for (let waited = 0; waited < PATIENCE; waited += LOOK_EVERY) {
      if (await done()) return true;
      await this.baker.page.waitForTimeout(LOOK_EVERY);
    }
    return false;
  }

  /** Says it behind a tap on what stands still, until it was understood; then nobody speaks. */
  private async say(phrases: readonly EarPhrase[], done: () => Promise<boolean>): Promise<void> {
    const { baker, kitchen } = this;
    for (let n = 1; n <= MOST_TIMES; n += 1) {
      await this.silence();
      await kitchen.put(await kitchen.sound(phrases));
      await baker.tapNow('.bench-edge');
      await baker.app.turn(SETTLE_MS + 50);
      const understood = await this.until(done);
      await kitchen.put(await kitchen.sound([]));
      if (understood) return;
      this.again += 1;
    }
    throw new Error(`${phrases.join(' ')} was not understood: “${await baker.headline()}”.`);
  }

  /** A phrase that is one fact. */
  private async notedBy(phrase: EarPhrase): Promise<Fact> {
    const before = await this.baker.app.countRows();
    const fact = await this.noted(() =>
      this.say([phrase], async () => (await this.baker.app.countRows()) > before),
    );
    this.spoken.push(nameOf(fact));
    return fact;
  }

  /** A reading digit by digit; what was read back is agreed to. */
  private async reading(): Promise<Fact> {
    const { baker } = this;
    const { page } = baker;
    await this.say(['reading'], async () => (await page.locator('.key').count()) > 0);
    // The page has the time to ask for the digits.
    await baker.app.turn(SETTLE_MS + 50);
    const typed = page.locator('.pad-value:not([data-blank]) > .pad-typed');
    await this.say(READING, async () => (await typed.allInnerTexts()).join('').startsWith('25'));
    // Nobody says more: it is read back.
    await baker.app.turn(NEXT_KEY_MS + 100);
    return this.notedBy('yes');
  }

  /** What the program says is over. */
  private async silence(): Promise<void> {
    const caption = this.baker.page.locator('.caption');
    for (let n = 0; n < 12 && (await caption.allInnerTexts()).join('').trim() !== ''; n += 1)
      await this.baker.app.turn(1_500);
  }

  override async goOn(): Promise<Fact | null> {
    const seen = await this.clear();
    if (seen.left !== null) {
      await this.waitOut(seen);
      return null;
    }
    return this.act(seen);
  }

  override async act(seen: Screen): Promise<Fact> {
    const slab = this.baker.page.locator('.slab').first();
    const does = (await slab.getAttribute('data-does')) as EarPhrase | null;
    if (does === 'reading') return this.reading();
    if (does !== null && does !== 'lidOff' && !seen.pad) return this.notedBy(does);
    const fact = await super.act(seen);
    this.byHand.push(`${nameOf(fact)}: ${seen.headline}`);
    return fact;
  }

  /** What was said last is taken back by saying so. */
  takeThatBack(): Promise<Fact> {
    return this.notedBy('takeBack');
  }
}
