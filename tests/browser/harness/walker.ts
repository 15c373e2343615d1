import { expect } from 'vitest';
import { taskPress, tasks } from '../../../src/core/speech/words/tasks.ts';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { Baker } from './baker.ts';
import { readScreen, type Screen } from './screen.ts';

/** The screen counts in whole seconds, and a press takes its own. */
const SLACK_MS = 3_000;

/** 'loaded', or of an answer what it is about: 'answer:dent'. */
export const nameOf = (fact: Fact): string => {
  if (fact.kind !== 'press') return fact.kind;
  return fact.act === 'answer' ? `answer:${fact.item}` : fact.act;
};

/** What a walk does on its way, beside what the screen asks for. */
export interface WalkOptions {
  /** Acts that are taken back and done again, each once: 'loaded', 'answer:dent'. */
  readonly takeBack: readonly string[];
  /** Headlines of the waits and hot calls in which the page is loaded anew, each once. */
  readonly reload: readonly string[];
}

/** What a walk did beside what the screen asked for: headlines of waits and calls, and acts. */
export interface Did {
  readonly halved: string[];
  readonly reloaded: string[];
  readonly tookBack: string[];
}

/** A baker who does what the screen asks for, one thing after the other. */
export class Walker {
  readonly did: Did = { halved: [], reloaded: [], tookBack: [] };
  /** The headline whose call was hushed last. */
  protected hushed = '';

  constructor(
    readonly baker: Baker,
    readonly options: WalkOptions,
  ) {}

  /** The screen, once it shows an act: pages that come late are awaited, not read as empty. */
  async look(): Promise<Screen> {
    await expect.poll(async () => (await readScreen(this.baker.page)).headline).not.toBe('');
    return readScreen(this.baker.page);
  }

  /** Loads the page anew where the walk wants it. */
  protected async reload({ headline }: Screen): Promise<boolean> {
    const { reload } = this.options;
    if (!reload.includes(headline) || this.did.reloaded.includes(headline)) return false;
    this.did.reloaded.push(headline);
    await this.baker.app.reopen();
    await this.baker.app.turn(100);
    await this.baker.page.locator('.act-headline').first().waitFor();
    return true;
  }

  /**
   * Hushes, reads and opens whatever lies before the act; what the screen shows then, armed: a tap in
   * this instant meets what was read.
   */
  async clear(): Promise<Screen> {
    const { baker } = this;
    for (let n = 0; n < 8; n += 1) {
      await baker.beat();
      const seen = await this.look();
      if (seen.call !== null) {
        this.hushed = seen.headline;
        await this.noted(() => baker.tapNow('.act-headline'));
      } else if (seen.card) await baker.tapNow('.return button');
      else if (seen.headline === tasks.rise45.headline) {
        // A reading would move the very times that the walk holds: it leaves the ask out.
        await this.noted(() => baker.tapNow(`.tile:has-text("${taskPress.leave}")`));
      } else if (seen.gate) await baker.holdNow();
      else return seen;
    }
    throw new Error('Something lies before the act and does not go away.');
  }

  /** The act on the screen that was just read, by its slab; what it left in the log. */
  async act(seen: Screen): Promise<Fact> {
    const { baker } = this;
    if (!seen.pad) {
      const opens = (await baker.page.locator('.slab').innerText()).includes('Key it in');
      if (!opens) return this.noted(() => baker.tapNow('.slab:not(.hold)'));
      await baker.tapNow('.slab');
    }
    await baker.key('25');
    return this.noted(() => baker.tap('.slab'));
  }

  /** Takes the last act back; what the screen shows then. */
  protected async takeBack(): Promise<Screen> {
    await this.clear();
    await this.noted(() => this.baker.tapNow('button:has-text("Take that back")'));
    return this.look();
  }

  /** One tap that is one fact. */
  async noted(tap: () => Promise<void>): Promise<Fact> {
    const { app } = this.baker;
    const before = await app.countRows();
    await this.baker.noted(tap);
    const rows = (await app.storeRows('log', before + 1)) as { fact: Fact }[];
    expect(rows).toHaveLength(1);
    return rows[0]!.fact;
  }

  /** A wait seen twice ends at the same instant. */
  private same(seen: Screen, before: Screen): void {
    expect([seen.headline, seen.left === null]).toEqual([before.headline, false]);
    const moved = seen.now + seen.left! - (before.now + before.left!);
    expect(Math.abs(moved), `${before.headline} ends elsewhere`).toBeLessThanOrEqual(SLACK_MS);
  }

  /** Half a wait; there it is cut short and that taken back, and the page may be loaded anew. */
  private async halve(wait: Screen): Promise<void> {
    this.did.halved.push(wait.headline);
    await this.baker.app.turn(wait.left! / 2);
    const before = await this.clear();
    if (await this.reload(before)) this.same(await this.clear(), before);
    await this.noted(() => this.baker.tapNow('.slab'));
    expect((await this.look()).headline).not.toBe(before.headline);
    await this.takeBack();
    this.same(await this.clear(), before);
  }

  /** Waits until the wait's own call rings. */
  protected async waitOut({ headline, left }: Screen): Promise<void> {
    await this.baker.app.turn(left!);
    await expect
      .poll(() => this.baker.page.locator('.call').count(), { message: `${headline} is over` })
      .toBe(1);
    const ringing = await this.look();
    if (!(await this.reload(ringing))) return;
    // It rings on in the page that was loaded anew, and for the same.
    await expect.poll(() => this.baker.page.locator('.call').count()).toBe(1);
    const { call, headline: called } = await this.look();
    expect([call, called]).toEqual([ringing.call, ringing.headline]);
  }

  /** Takes back what was just done: the act is there again, and a call it had ended rings again. */
  private async undo(before: Screen, act: string): Promise<void> {
    this.did.tookBack.push(act);
    await this.takeBack();
    if (this.hushed === before.headline) {
      await expect
        .poll(() => this.baker.page.locator('.call').count(), { message: `${act} taken back` })
        .toBe(1);
    }
    expect((await this.clear()).headline, `${act} taken back`).toBe(before.headline);
  }

  /** Does the next thing; the fact where it was an act. */
  async goOn(): Promise<Fact | null> {
    const seen = await this.clear();
    if (seen.left !== null) {
      if (!this.did.halved.includes(seen.headline)) await this.halve(seen);
      await this.waitOut(await this.clear());
      return null;
    }
    const fact = await this.act(seen);
    const act = nameOf(fact);
    const again = this.options.takeBack.includes(act) && !this.did.tookBack.includes(act);
    if (!again) return fact;
    await this.undo(seen, act);
    return null;
  }
}
