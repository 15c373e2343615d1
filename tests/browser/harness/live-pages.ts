import { vi } from 'vitest';
import { live } from '../../../src/core/speech/words/live.ts';
import { runningDay } from '../../fakes/running-day.ts';
import type { Hand } from '../../machines/support/hand.ts';
import type { Baker } from './baker.ts';
import { last, press, to, turned, type PageStep } from './page-step.ts';
import { putRows } from './put-rows.ts';

const { hand: late } = runningDay('levain.ripening', 120, 'UTC');
late.turnTo(Date.UTC(2031, 4, 2, 6, 31));
/** A Friday morning on which the levain was fed two hours late. */
export const LATE_LEVAIN = late.now;

const { hand: missed } = runningDay('bulk.between', 0, 'UTC');
missed.turn(80);
/** An hour and a half after the salt: the first fold was not done. */
export const MISSED_FOLD = missed.now;

/** Until the planner has answered. */
const laid = (baker: Baker): Promise<void> =>
  vi.waitFor(
    async () => {
      await baker.app.turn(200);
      const line = await baker.page.locator('.live-stands').innerText();
      if (line === live.working) throw new Error('The day is still being laid.');
    },
    { timeout: 30_000, interval: 100 },
  );

/** The bench of a log's bake, its More opened. */
const bench = (name: string, { records }: Hand): PageStep => ({
  name,
  async go(baker) {
    await baker.page.evaluate(putRows(records));
    await baker.app.reopen();
    await baker.page.locator('.act-headline').first().waitFor();
    // What rings takes the first touch for itself.
    await baker.press('More');
  },
});
const theDay = (name: string): PageStep => ({
  name,
  async go(baker) {
    const day = baker.page.locator('button:has-text("The day’s plan")');
    if (!(await day.isVisible())) await baker.press('More');
    await baker.press('The day’s plan');
    await baker.page.locator('.live-stands').waitFor();
    await laid(baker);
  },
});
/** What may be done: found by the planner after these presses. */
const ways = (name: string, ...labels: readonly string[]): PageStep => ({
  name,
  async go(baker) {
    await press(baker, labels.slice(0, -1));
    await baker.press(labels.at(-1)!);
    await baker.page.locator('h2:has-text("Do this")').waitFor();
  },
});
/** From two ways back to the day, and on to what came up. */
const anew = (name: string, ...labels: readonly string[]): PageStep => ({
  name,
  async go(baker) {
    // The bench under the sheet has its own "Take that back".
    await turned(baker, `.sheet ${last('Back')}`);
    await press(baker, ['Something came up', ...labels]);
  },
});

/** The day while it runs, from the bench on, at LATE_LEVAIN: what moved, and what is done when something comes up. */
export const LIVE_PAGES: readonly PageStep[] = [
  bench('bench, its levain late', late),
  theDay('the day so far, moved'),
  to('something came up', 'Something came up'),
  to('levain late, by how much', 'Levain is late'),
  ways('levain late, two ways', '2 h'),
  anew('called away, when', 'Called away'),
  to('called away, for how long', '10 min'),
  ways('called away, two ways', '2 h'),
  {
    name: 'the day so far, taken',
    async go(baker) {
      await baker.noted(() => baker.press('Do it this way'));
      await baker.page.locator('.live-stands').waitFor();
      await laid(baker);
    },
  },
];

/** What comes up while a dough rises, at MISSED_FOLD. */
export const CAME_UP_PAGES: readonly PageStep[] = [
  bench('bench, its fold missed', missed),
  theDay('the day so far, a fold missed'),
  to('something came up, a fold missed', 'Something came up'),
  ways('missed a fold, two ways', 'Missed a fold'),
  anew('something came up, again'),
  ways('overslept, two ways', 'Overslept'),
  anew('oven dead, until when', 'Oven is dead'),
  ways('oven dead, two ways', '24 h'),
  anew('called away for long', 'Called away', '30 min'),
  ways('called away for long, two ways', '8 h'),
];
