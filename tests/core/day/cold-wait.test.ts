import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE, SCOOP } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
/** Divided at noon, in the fridge at 13:00. */
const DIVIDED = T0 + 6 * HOUR;
const IN = DIVIDED + HOUR;

/** A loaf that was joined as it was divided: its bulk went as far as the process wants. */
const input = (change: Partial<WaitInput> = {}, process = {}): WaitInput => ({
  stage: 'proof.retard',
  now: IN,
  recipe: { ...RECIPE, process: { ...RECIPE.process, ...process } },
  kitchen: 24,
  entered: { 'shape.divide': DIVIDED, 'proof.retard': IN },
  touches: 3,
  prior: { mean: 0, sd: 0.15 },
  seen: [],
  done: [],
  again: false,
  chilled: IN,
  ...change,
});
const marks = (change: Partial<WaitInput> = {}, process = {}) =>
  waitFor(input(change, process)).marks;
const at = (hours: number, reading: Reading) => ({ at: IN + hours * HOUR, reading });
const growth = (grown: 'none' | 'little' | 'grown', rim?: 'below' | 'level' | 'above') =>
  at(10, { what: 'growth', grown, ...(rim ? { rim } : {}) });
const dent = (it: 'springs' | 'slow' | 'stays') => at(10, { what: 'poke', dent: it });
/** What a look at ten hours made of the likely hour, in hours from the fridge. */
const likelyAfter = (...seen: WaitInput['seen']): number =>
  (marks({ seen, now: IN + 10 * HOUR, again: true })['likely']! - IN) / HOUR;

describe('a loaf in the fridge', () => {
  it('has a window of whole hours, in order, and no minute', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: 2, max: 9, noNaN: true }),
        fc.boolean(),
        (mean, fridge, again) => {
          const { earliest, likely, latest, look } = marks(
            { prior: { mean, sd: 0.15 }, again, now: again ? IN + 9 * HOUR : IN },
            { fridge },
          );
          for (const mark of [earliest!, likely!, latest!]) expect(mark % HOUR).toBe(0);
          expect(earliest).toBeLessThanOrEqual(likely!);
          expect(likely).toBeLessThanOrEqual(latest!);
          expect(Number.isInteger(look)).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
    expect(waitFor(input()).doubt).toBe('coldProof');
  });

  it('is likely ready within the hours that are usual, 8 to 18, and its window holds them', () => {
    // A usual bench and 20 min on the counter at 25.2 °C, some rye in it, are what those hours are for.
    const chilled = DIVIDED + 56 * MINUTE;
    const { formula } = RECIPE;
    const flours = [
      { ...formula.flours[0]!, pct: 85 },
      { id: 'rye', name: 'Rye flour', grain: 'rye', pct: 15 } as const,
    ];
    const recipe = { ...RECIPE, formula: { ...formula, flours } };
    const { earliest, likely, latest } = marks({ chilled, now: chilled, kitchen: 25.2, recipe });
    expect((likely! - chilled) / HOUR).toBeGreaterThanOrEqual(8);
    expect((likely! - chilled) / HOUR).toBeLessThanOrEqual(18);
    expect((earliest! - chilled) / HOUR).toBeLessThan(8);
    expect((latest! - chilled) / HOUR).toBeGreaterThan(18);
  });

  it('is sooner in a warmer fridge, for a quicker starter, and for one that stood out longer', () => {
    const plain = marks()['likely']!;
    expect(marks({}, { fridge: 8 })['likely']).toBeLessThan(plain);
    expect(marks({ prior: { mean: 0.15, sd: 0.15 } })['likely']).toBeLessThan(plain);
    expect(marks({ chilled: IN - 30 * MINUTE, now: IN })['likely']).toBeGreaterThan(plain);
  });

  it('follows a probe in its core: warm after hours in the fridge, it is sooner', () => {
    const warm = at(6, { what: 'coreTemperature', celsius: 12 });
    expect(marks({ seen: [warm] })['likely']).toBeLessThan(marks()['likely']!);
  });

  it('does not follow the kitchen while it is in the fridge', () => {
    const hot = at(1, { what: 'kitchenTemperature', celsius: 30 });
    expect(marks({ seen: [hot] })).toEqual(marks());
  });

  it('is looked at where the process has it, and sooner only where it is likely over by then', () => {
    for (const retard of [0, 300, 840])
      expect((marks({}, { retard })['look']! - IN) / MINUTE).toBe(Math.max(1, retard));
    const quick = marks({ prior: { mean: 0.25, sd: 0.1 } }, { retard: 840, fridge: 8 });
    expect((quick['look']! - IN) / HOUR).toBeLessThan(14);
    expect((quick['look']! - IN) / HOUR).toBeGreaterThanOrEqual(1);
  });

  it('of a look that finds it not grown is later, of one that finds it grown sooner', () => {
    const none = likelyAfter();
    expect(likelyAfter(growth('none', 'below'))).toBeGreaterThan(none);
    expect(likelyAfter(growth('none'))).toBeGreaterThan(likelyAfter(growth('little')));
    expect(likelyAfter(growth('little'))).toBeGreaterThan(likelyAfter(growth('grown')));
    expect(likelyAfter(growth('grown', 'above'))).toBeLessThan(likelyAfter(growth('grown')));
  });

  it('takes a dent for a hint: it moves the hour, and less than growth does', () => {
    const none = likelyAfter();
    expect(likelyAfter(dent('springs'))).toBeGreaterThan(none);
    expect(likelyAfter(dent('stays'))).toBeLessThan(none);
    expect(likelyAfter(dent('springs')) - none).toBeLessThan(likelyAfter(growth('none')) - none);
  });

  it('is surer once it has been seen: its window is narrower', () => {
    const width = (seen: WaitInput['seen']) => {
      const { earliest, latest } = marks({ seen, now: IN + 10 * HOUR, again: true });
      return latest! - earliest!;
    };
    expect(width([growth('little'), dent('slow')])).toBeLessThan(width([]));
  });

  it('is looked at again half-way to its likely hour, in 1 to 3 hours', () => {
    const minutes = (mean: number) => {
      const now = IN + 9 * HOUR;
      return (marks({ now, again: true, prior: { mean, sd: 0.1 } })['look']! - now) / MINUTE;
    };
    expect(minutes(-0.4)).toBe(180);
    expect(minutes(0.4)).toBe(60);
  });

  it('of a spooned dough keeps to print, since nobody fitted an index to it', () => {
    const recipe = { ...SCOOP, process: { ...SCOOP.process, retard: 840 } };
    const wait = waitFor(input({ recipe }));
    expect(wait.marks).toEqual({
      look: IN + 14 * HOUR,
      earliest: IN + 8 * HOUR,
      latest: IN + 18 * HOUR,
    });
  });
});
