import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const PROVING = T0 + 90 * MINUTE;
const READ = PROVING + 20 * MINUTE;

const at = (when: number, reading: Reading) => ({ at: when, reading });
const rise = (percent: number, when = READ, jar = false) =>
  at(when, { what: 'rise', percent, of: 'dough', ...(jar ? { in: 'jar' } : {}) });
const edge = (stands: 'flat' | 'domed' | 'fallen', bubbles: 'none' | 'many', when = READ) =>
  at(when, { what: 'edge', edge: stands, bubbles });

const look = (seen: WaitInput['seen'], change: Partial<WaitInput> = {}) =>
  waitFor({
    stage: 'bulk.proving',
    now: PROVING,
    recipe: RECIPE,
    kitchen: 26,
    entered: { 'mix.first': T0, 'mix.work': T0 + 30 * MINUTE, 'bulk.proving': PROVING },
    touches: 3,
    prior: { mean: 0, sd: 0.2 },
    seen,
    done: [],
    again: false,
    ...change,
  }).marks['look']!;

describe('what is read while the dough rises', () => {
  it('is looked at now where it says ready together', () => {
    expect(look([rise(75), edge('domed', 'many')])).toBe(READ);
    // In either order, and some minutes apart.
    expect(look([edge('domed', 'many', READ - 15 * MINUTE), rise(80)])).toBe(READ);
  });

  it('is looked at now where the edge has fallen, whatever else it shows', () => {
    expect(look([edge('fallen', 'many')])).toBe(READ);
    expect(look([rise(50), edge('fallen', 'none')])).toBe(READ);
  });

  it('is looked at now where it has risen as far as its bread wants, or further', () => {
    expect(RECIPE.process.rise).toBe(90);
    // Beyond what the clock knows a reading moves no hour, and would be waited on.
    for (const percent of [90, 100, 150]) expect(look([rise(percent)])).toBe(READ);
    expect(look([rise(85)])).toBeGreaterThan(READ);
    expect(look([rise(150, READ, true)])).toBeGreaterThan(READ);
    // The last word stands: what was mistyped and said again calls nothing.
    expect(look([rise(150, READ - MINUTE), rise(50)])).toBeGreaterThan(READ);
  });

  it('waits for the model’s look where it says ready by one sign alone, or not at all', () => {
    for (const seen of [
      [rise(75)],
      [edge('flat', 'none')],
      [rise(50), edge('domed', 'many')],
      [rise(50), edge('flat', 'none')],
      // A sample in a jar is not the dough: with it a dome is no more than itself.
      [rise(90, READ, true), edge('domed', 'none')],
    ])
      expect(look(seen)).toBeGreaterThan(READ);
  });

  it('is not held against a baker who looked since and said "not yet"', () => {
    const before = [rise(75, PROVING - MINUTE), edge('domed', 'many', PROVING - MINUTE)];
    const looked = { again: true, entered: { 'mix.first': T0, 'bulk.look': PROVING - 2 * MINUTE } };
    const next = look(before, looked);
    expect(next - PROVING).toBeGreaterThanOrEqual(20 * MINUTE);
    expect(next - PROVING).toBeLessThanOrEqual(HOUR);
  });

  it('hurries no hands that are still to go in', () => {
    const { marks } = {
      marks: waitFor({
        stage: 'bulk.between',
        now: PROVING,
        recipe: RECIPE,
        kitchen: 26,
        entered: { 'mix.first': T0, 'bulk.between': PROVING },
        touches: 2,
        prior: { mean: 0, sd: 0.2 },
        seen: [rise(75), edge('domed', 'many')],
        done: [],
        again: false,
      }).marks,
    };
    expect(marks['touch']).toBe(PROVING + 30 * MINUTE);
  });
});
