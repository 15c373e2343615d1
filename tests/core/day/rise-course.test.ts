import { describe, expect, it } from 'vitest';
import { riseCourse } from '../../../src/core/day/rise-course.ts';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE, SCOOP } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const input = (change: Partial<WaitInput> = {}): WaitInput => ({
  stage: 'bulk.proving',
  now: T0 + 2 * HOUR,
  recipe: RECIPE,
  kitchen: 22,
  entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': T0 + 2 * HOUR },
  touches: 3,
  prior: OPENING_BELIEF,
  seen: [],
  done: [],
  again: false,
  ...change,
});
const NOW = T0 + 3 * HOUR;
const read = (percent: number, jar = false) => ({
  at: NOW,
  reading: {
    what: 'rise',
    percent,
    of: 'dough',
    ...(jar ? { in: 'jar' } : {}),
  } satisfies Reading as Reading,
});
const warm = { at: T0 + 20 * MINUTE, reading: { what: 'doughTemperature', celsius: 27 } } as const;
const width = (change: Partial<WaitInput>) => {
  const at = riseCourse(input(change), NOW)!.band.find((one) => one.at >= NOW)!;
  return at.high - at.low;
};

describe('the course of a rise', () => {
  it('grows, holds its likely line within its band, and reaches the goal where the wait says', () => {
    const { band, goal } = riseCourse(input(), NOW)!;
    for (const [i, one] of band.entries()) {
      expect(one.low).toBeLessThanOrEqual(one.likely);
      expect(one.likely).toBeLessThanOrEqual(one.high);
      if (i > 0) expect(one.likely).toBeGreaterThanOrEqual(band[i - 1]!.likely - 1e-9);
    }
    expect(goal).toBe(90);
    const { likely, latest } = waitFor(input()).marks;
    const step = band[1]!.at - band[0]!.at;
    const there = band.find((one) => one.likely >= goal)!.at;
    expect(Math.abs(there - likely!)).toBeLessThanOrEqual(step);
    expect(band.at(-1)!.at).toBeGreaterThanOrEqual(latest! - step);
  });

  it('is narrower once a rise was read, and keeps what was read', () => {
    expect(width({ seen: [read(25)] })).toBeLessThan(width({}));
    expect(riseCourse(input({ seen: [read(25), warm] }), NOW)!.seen).toEqual([read(25)]);
  });

  it('of a jar beside it runs on the jar’s own clock: behind the bowl in a cooler room', () => {
    const seen = [warm, read(20, true)];
    const { band, jar } = riseCourse(input({ seen }), NOW)!;
    const i = band.findIndex((one) => one.at >= NOW);
    expect(jar[i]!.likely).toBeLessThan(band[i]!.likely - 5);
    expect(riseCourse(input({ seen: [warm, read(20)] }), NOW)!.jar).toEqual([]);
    // What is low for the bowl is as foretold for its jar: the ready hour tells them apart.
    const likely = (jarred: boolean) =>
      waitFor(input({ seen: [warm, read(20, jarred)] })).marks['likely']!;
    expect(likely(true)).toBeLessThan(likely(false));
  });

  it('always shows up to now', () => {
    const late = T0 + 20 * HOUR;
    expect(riseCourse(input(), late)!.band.at(-1)!.at).toBeGreaterThanOrEqual(late);
  });

  it('of a loaf is its index on the way to ready, fridge and all', () => {
    const chilled = T0 + 7 * HOUR;
    const entered = { 'shape.divide': T0 + 6 * HOUR, 'proof.retard': chilled };
    const growth = { at: chilled + HOUR, reading: { what: 'growth', grown: 'little' } } as const;
    const loaf = input({ stage: 'proof.retard', now: chilled, chilled, entered, seen: [growth] });
    const course = riseCourse(loaf, chilled + 2 * HOUR)!;
    expect(course.of).toBe('loaf');
    expect(course.goal).toBe(100);
    expect(course.seen).toEqual([growth]);
    const there = course.band.find((one) => one.likely >= 100)!.at;
    expect(Math.abs(there - waitFor(loaf).marks['likely']!)).toBeLessThanOrEqual(1.5 * HOUR);
  });

  it('is none where nothing rises, nor of a spooned loaf', () => {
    expect(riseCourse(input({ stage: 'levain.ripening' }), NOW)).toBeNull();
    expect(riseCourse(input({ stage: 'proof.warm', recipe: SCOOP }), NOW)).toBeNull();
  });
});
