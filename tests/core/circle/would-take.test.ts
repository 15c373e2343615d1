import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sameBatch, type OvenBatch } from '../../../src/core/circle/oven-batch.ts';
import type { DayHas } from '../../../src/core/circle/cap.ts';
import { dayWithRoom, tooEarly, wouldTake } from '../../../src/core/circle/would-take.ts';
import { anyBatch, anyDay, anyHas, BOUNDLESS, WHEAT } from './oven-batches.ts';

const FOUR_HOURS: DayHas = { ...BOUNDLESS, oven: 240 };
const EIGHT = 8 * 60;
const loaves = (count: number): OvenBatch => ({ ...WHEAT, count });

describe('an order beside what a day has taken', () => {
  it('is taken while it fits, with the hour from which it is cool', () => {
    expect(wouldTake([loaves(2)], [loaves(5)], FOUR_HOURS, EIGHT)).toEqual({
      takes: true,
      binds: [],
      go: [2],
      lastOut: 10 * 60 + 50,
      warmUntil: 12 * 60 + 50,
      coolAt: 12 * 60 + 50,
      ifOvenGoesOn: false,
    });
  });

  it('is not taken past the oven’s hours: how many still go, and the hour that would do', () => {
    expect(wouldTake([loaves(9)], [loaves(7)], FOUR_HOURS, EIGHT)).toEqual({
      takes: false,
      binds: ['oven'],
      go: [5],
      // Sixteen are six loads: 6 × 50 + 5 × 10 minutes.
      lastOut: EIGHT + 350,
      warmUntil: EIGHT + 350 + 120,
      coolAt: EIGHT + 350 + 120,
      ifOvenGoesOn: true,
    });
  });

  it('is not helped by a longer oven where the fridge is full as well', () => {
    const would = wouldTake([loaves(9)], [loaves(7)], { ...FOUR_HOURS, fridge: 10 }, EIGHT);
    expect(would).toMatchObject({ binds: ['oven', 'fridge'], go: [3], ifOvenGoesOn: false });
  });

  it('of two breads says of each how many still go, in the order they were asked for', () => {
    const barley = { ...WHEAT, bread: 'barley', cold: false, count: 6 };
    const { go, takes } = wouldTake([loaves(8), barley], [], FOUR_HOURS, EIGHT);
    expect([takes, go]).toEqual([false, [8, 3]]);
  });

  it('waits for the slicing of what is sliced', () => {
    const rye = { ...WHEAT, bread: 'rye', cool: 120, slice: 720 };
    expect(wouldTake([rye], [], FOUR_HOURS, EIGHT).coolAt).toBe(EIGHT + 50 + 120);
    const sliced = wouldTake([{ ...rye, sliced: true }], [], FOUR_HOURS, EIGHT);
    expect(sliced.coolAt).toBe(EIGHT + 50 + 720);
  });

  it('names no hour where the oven’s are not said, and none of what no pot may bake', () => {
    expect(wouldTake([WHEAT], [], BOUNDLESS, null)).toMatchObject({
      takes: true,
      lastOut: null,
      coolAt: null,
    });
    const nowhere = wouldTake(
      [{ ...WHEAT, grams: 2000, places: 0 }],
      [loaves(3)],
      FOUR_HOURS,
      EIGHT,
    );
    expect(nowhere).toMatchObject({ takes: false, binds: ['pots'], go: [0], coolAt: null });
  });

  it('has no part in a fridge that others overfilled', () => {
    const warm = { ...WHEAT, bread: 'barley', cold: false };
    const would = wouldTake([warm], [loaves(5)], { ...BOUNDLESS, fridge: 4 }, EIGHT);
    expect(would).toMatchObject({ takes: true, go: [1] });
  });

  it('says no to ten thousand loaves at once, with the number that can be taken', () => {
    const begun = performance.now();
    const would = wouldTake([loaves(10_000)], [loaves(7)], FOUR_HOURS, EIGHT);
    expect(performance.now() - begun).toBeLessThan(50);
    expect(would).toMatchObject({ takes: false, go: [5] });
    // 10,007 in threes are 3,336 loads.
    expect(would.lastOut).toBe(EIGHT + 3336 * 50 + 3335 * 10);
  });

  it('is taken exactly where all of it goes', () => {
    fc.assert(
      fc.property(anyBatch('wheat'), anyBatch('rye'), anyDay, anyHas, (a, b, taken, bounds) => {
        // One kitchen bakes loaves of one bread and size in one way.
        const asked = [a, b]
          .filter(({ count }) => count > 0)
          .map((one) => ({
            ...(taken.find((its) => sameBatch(its, one)) ?? one),
            count: one.count,
          }));
        const { takes, go, binds } = wouldTake(asked, taken, bounds, EIGHT);
        expect(go).toHaveLength(asked.length);
        expect(takes).toBe(go.every((count, i) => count === asked[i]!.count));
        expect(takes).toBe(binds.length === 0);
        const some = asked.map((one, i) => ({ ...one, count: go[i]! }));
        expect(wouldTake(some, taken, bounds, EIGHT).takes).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('goes on the first day that takes all of it', () => {
    const days = [
      { day: '2031-05-10', taken: [loaves(11)] },
      { day: '2031-05-17', taken: [loaves(10)] },
      { day: '2031-05-24', taken: [] },
    ];
    expect(dayWithRoom([loaves(2)], days, FOUR_HOURS)).toBe('2031-05-17');
    expect(dayWithRoom([loaves(12)], days, FOUR_HOURS)).toBe('2031-05-24');
    expect(dayWithRoom([loaves(13)], days, FOUR_HOURS)).toBeNull();
  });

  it('is still warm a minute before it is cool, and not at that minute', () => {
    const { warmUntil, coolAt } = wouldTake([loaves(2)], [loaves(5)], FOUR_HOURS, EIGHT);
    const at = (minute: number | null) => tooEarly(minute, { warmUntil, coolAt });
    expect([769, 770, null].map(at)).toEqual(['warm', null, null]);
    expect(tooEarly(630, { warmUntil: null, coolAt: null })).toBeNull();
  });

  it('of a dense rye is cold and sets for hours', () => {
    const rye = { ...WHEAT, bread: 'rye', cool: 960, slice: 960 };
    const would = wouldTake([rye], [], FOUR_HOURS, EIGHT);
    expect([600, 700, 1439].map((at) => tooEarly(at, would))).toEqual([
      'warm',
      'setting',
      'setting',
    ]);
    expect(would.coolAt).toBe(EIGHT + 50 + 960);
  });
});
