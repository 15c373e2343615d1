import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
/** The last fold is done an hour and a half after levain met flour. */
const PROVING = T0 + 90 * MINUTE;

const input = (change: Partial<WaitInput> = {}): WaitInput => ({
  stage: 'bulk.proving',
  now: PROVING,
  recipe: RECIPE,
  kitchen: 24,
  entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': PROVING },
  touches: 3,
  prior: { mean: 0, sd: 0.2 },
  seen: [],
  done: [],
  again: false,
  ...change,
});
const marks = (change: Partial<WaitInput> = {}) => waitFor(input(change)).marks;
const asked = (m: Readonly<Record<string, number>>) =>
  Object.keys(m).filter((mark) => mark.startsWith('lead.rise'));
const rise = (hours: number, percent: number) => ({
  at: T0 + hours * HOUR,
  reading: { what: 'rise', percent, of: 'dough' } satisfies Reading as Reading,
});

describe('a bulk’s rise is asked for', () => {
  it('at 45, 70 and 85 % of the way from levain in flour to likely ready', () => {
    const m = marks();
    expect(asked(m)).toEqual(['lead.rise45', 'lead.rise70', 'lead.rise85']);
    for (const [task, share] of [
      ['rise45', 0.45],
      ['rise70', 0.7],
      ['rise85', 0.85],
    ] as const) {
      expect((m[`lead.${task}`]! - T0) / (m['likely']! - T0)).toBeCloseTo(share, 6);
    }
  });

  it('in the wait it falls into, between folds too, and never for what is past', () => {
    const late = marks({ now: T0 + 3 * HOUR });
    expect(asked(late)).not.toContain('lead.rise45');
    const between = marks({ stage: 'bulk.between', now: T0 + 2 * HOUR, touches: 2 });
    for (const mark of asked(between)) {
      expect(between[mark]).toBeGreaterThan(T0 + 2 * HOUR);
      expect(between[mark]).toBeLessThan(between['touch']!);
    }
  });

  it('later once an answer was low, sooner once it was high, and never again for what is answered', () => {
    const first = marks();
    const then = (first['lead.rise45']! - T0) / HOUR;
    const low = marks({ seen: [rise(then, 0)] });
    const high = marks({ seen: [rise(then, 50)] });
    expect(asked(low)).toEqual(['lead.rise70', 'lead.rise85']);
    expect(low['lead.rise70']).toBeGreaterThan(first['lead.rise70']!);
    expect(high['lead.rise85'] ?? 0).toBeLessThan(first['lead.rise85']!);
  });

  it('not within ten minutes of a look, nor after the last one', () => {
    const { look, ...m } = marks();
    for (const mark of asked(m)) expect(m[mark]).toBeLessThanOrEqual(look! - 10 * MINUTE);
    const after = (m['lead.rise85']! - T0) / HOUR;
    expect(asked(marks({ seen: [rise(after, 60)] }))).toEqual([]);
  });

  it('not after a "not yet": its looks do the asking; nor what was left out', () => {
    expect(asked(marks({ again: true, now: T0 + 2 * HOUR }))).toEqual([]);
    expect(asked(marks({ done: ['rise45'] }))).toEqual(['lead.rise70', 'lead.rise85']);
  });

  it('of the dough alone: a levain, a loaf and a kitchen’s warmth ask and answer nothing', () => {
    expect(asked(marks({ stage: 'levain.ripening', now: T0, entered: {} }))).toEqual([]);
    const warm = {
      at: T0 + 2 * HOUR,
      reading: { what: 'kitchenTemperature', celsius: 24 } as const,
    };
    expect(asked(marks({ seen: [warm] }))).toEqual(asked(marks()));
  });
});
