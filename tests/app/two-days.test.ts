import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import { serveFormulas } from '../fakes/baking.ts';
import { twoDays, type Walked } from './support/two-days.ts';

/**
 * Two days in a kitchen whose tablet sleeps, has its clock set, comes to other zones, and is shut and opened. What
 * has to be heard is reckoned beside the program (support/owed-calls.ts), from the deadlines that stand in the
 * log's rows and from what happens to the tablet in true time; not from its clock as the program reads it.
 *
 * An alarm's *instant* is the deadline that its fact carries, in kitchen time. What that is in true time, where
 * the device's clock is wrong, is what src/app/kitchen-time.ts and the page of a clock that leapt promise:
 *
 * - Awake, with its clock let alone, true time. A zone, or a night whose hours change, moves no instant: only
 *   the hours shown, which are those of the zone that stands, by the device's clock.
 * - Asleep, or shut: true time, by the clock. Nothing runs then. What came due is called within a second of
 *   waking, each by its own deadline, and marked as late as it is by that.
 * - Set back while it is awake, by more than 5 s: not at all. Every instant stays where it was in true time, what
 *   rings rings on, and the hours shown follow the clock. By less it is the clocks' drift: instants go with it,
 *   but never back behind what was written or was due.
 * - Set ahead while it is awake: as if so much time had passed. What lies in between is called at once, late by its
 *   deadline; all else comes so much sooner. From the press *It was set* on, whatever waited as it leapt and was not
 *   touched since is due in true time as if it had not leapt; what was done since stands. Ahead by up to
 *   15 minutes nobody is asked, and that much sooner it stays.
 * - Set while it sleeps: only the sum is known. It counts as the sleep; more than 5 s below nothing, as no time.
 * - Shut: kitchen time goes on from what the last fact says, or from a leap back since.
 *
 * So: every alarm at its instant within a second, or at waking, marked late; none lost, none twice; of several
 * the most urgent first, and the oldest of these. What is shown is held against it all the way
 * (support/tablet.ts, `check`).
 */

// Against what hangs, and no measure of anything.
vi.setConfig({ testTimeout: 120_000 });

const all: Walked[] = [];
beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(() => {
  const sum = (of: (walked: Walked) => number): number =>
    all.reduce((so, walked) => so + of(walked), 0);
  // A walk in which nothing happens proves nothing.
  if (all.length < SEEDS.length) return;
  expect(sum(({ tally }) => tally.owed)).toBeGreaterThan(50 * SEEDS.length);
  expect(sum(({ tally }) => tally.late)).toBeGreaterThan(10 * SEEDS.length);
  expect(sum(({ sleeps }) => sleeps)).toBeGreaterThan(8 * SEEDS.length);
  expect(sum(({ sets }) => sets)).toBeGreaterThan(5 * SEEDS.length);
  expect(sum(({ zones }) => zones)).toBeGreaterThan(SEEDS.length);
  expect(sum(({ reopened }) => reopened)).toBeGreaterThan(SEEDS.length);
});

/** Hundreds of fresh ones: tests/faults/two-days.test.ts. */
const SEEDS = [2, 3, 4, 17];

it.each(SEEDS)(
  'by seed %i every alarm of two days is heard once, at its instant or at waking',
  async (seed) => {
    const walked = await twoDays(seed);
    all.push(walked);
    expect(walked.faults).toEqual([]);
    expect(walked.tally).toMatchObject({ wrong: 0, lost: 0, double: 0 });
  },
);
