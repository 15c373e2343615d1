import { expect } from 'vitest';
import type { Fact } from '../../../src/core/records/fact.ts';
import type { Screen } from './screen.ts';
import { nameOf, Walker } from './walker.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

/** Milliseconds until the clock shows 'HH:MM' next; 0 while it does. */
const until = (time: string, now: number): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  const ahead = (hours * 60 + minutes) * MINUTE - (now % DAY);
  return ahead > -MINUTE ? Math.max(0, ahead) : ahead + DAY;
};

/** After so many acts the baker looks at another bake in the middle of this one's. */
const ROAM = 8;

/** One act: whose it was by the screen, and what it left in the log. */
export interface Done {
  readonly bake: string;
  readonly fact: Fact;
}

/**
 * A baker with several bakes: does what the bake on show asks for; where it waits, goes to another in one
 * press, and where all wait, lets the clock go on to the next of them.
 */
export class ManyWalker extends Walker {
  readonly done: Done[] = [];
  /** Bakes whose call came to the front by itself while another was on show. */
  readonly fetched: string[] = [];
  /** One press each: from bake, to bake. */
  readonly moves: string[] = [];
  /** The bake that runs alone: then the screen names none. */
  alone = '';
  /** What was on show when last looked. */
  private shown = '';
  private roamed = 0;

  /** The bake on show, by its short name: 'Olive' of 'Olive · Bulk, fold 1 of 2'. */
  private shownOf({ place, others }: Screen): string {
    return others.length === 0 ? this.alone : (place.split(' · ')[0] ?? '');
  }

  /** Goes from the screen just read to another bake by its own control: nothing is written. */
  async goTo(name: string): Promise<void> {
    const { baker } = this;
    const rows = await baker.app.countRows();
    await baker.tapNow(`.bake-control:has(.bake-name:text-is("${name}")) button`);
    await baker.app.turn(50);
    // The gate before a hot step names no bake: it is opened first.
    const seen = await this.clear();
    expect(this.shownOf(seen), `after going to ${name}`).toBe(name);
    // But for an ask that called there, was hushed and left out.
    const written = (await baker.app.storeRows('log', rows + 1)) as { fact: Fact }[];
    expect(written.filter(({ fact }) => !['taskDone', 'heard'].includes(nameOf(fact)))).toEqual([]);
    this.moves.push(`${this.shown} > ${name}`);
    this.shown = name;
  }

  /** Hushes what rings; what comes to the front by it is the bake that called. */
  override async clear(): Promise<Screen> {
    const rang = (await this.look()).call !== null;
    const seen = await super.clear();
    const now = this.shownOf(seen);
    if (rang && this.shown !== '' && now !== this.shown) {
      this.fetched.push(now);
      this.shown = now;
    }
    return seen;
  }

  /** Whatever is taken back, the bake it belongs to is on show again, if need be by one press. */
  private async undoOf(bake: string, before: Screen, act: string): Promise<void> {
    this.did.tookBack.push(`${bake}: ${act}`);
    await this.takeBack();
    let seen = await this.clear();
    if (this.shownOf(seen) !== bake) {
      await this.goTo(bake);
      seen = await this.clear();
    }
    expect(seen.headline, `${bake}: ${act} taken back`).toBe(before.headline);
  }

  /** All wait: the clock goes on to the first of them. */
  private async waitForAny(seen: Screen): Promise<void> {
    const times = seen.others.flatMap(({ time }) => (time ? [until(time, seen.now)] : []));
    // A clock time says no seconds: there it goes on in steps.
    const others = times.map((ms) => Math.max(ms, 20_000));
    await this.baker.app.turn(Math.min(seen.left ?? Infinity, ...others));
    const after = await this.look();
    if (after.call === null || !(await this.reload(after))) return;
    await expect.poll(() => this.baker.page.locator('.call').count()).toBe(1);
    expect((await this.look()).headline).toBe(after.headline);
  }

  override async goOn(): Promise<Fact | null> {
    const seen = await this.clear();
    const bake = this.shownOf(seen);
    this.shown = bake;
    if (seen.left !== null) {
      if (await this.reload(seen)) return null;
      const next = seen.others.find(({ late, waits }) => late || waits === 'your turn');
      if (next) await this.goTo(next.name);
      else await this.waitForAny(seen);
      return null;
    }
    const [aside] = seen.others;
    if (aside && this.done.length >= this.roamed + ROAM) {
      this.roamed = this.done.length;
      await this.goTo(aside.name);
      return null;
    }
    const fact = await this.act(seen);
    const act = nameOf(fact);
    const name = `${bake}: ${act}`;
    if (this.options.takeBack.includes(name) && !this.did.tookBack.includes(name)) {
      await this.undoOf(bake, seen, act);
      return null;
    }
    this.done.push({ bake, fact });
    return fact;
  }
}
