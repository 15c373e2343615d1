import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { makeBakeList } from '../../src/core/log/bake-list.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import { DAY } from '../../src/core/units.ts';
import { bakedYear } from './support/baked-year.ts';

const ASK = { bakes: 12, seed: 5 } as const;
const rows = bakedYear(ASK);
const pages = makeBakeList()(rows).bakes.map(({ bake }) => bakePage(rows, bake)!);
const kinds = new Set(rows.map(({ fact }) => fact.kind));

describe('an invented year of bakes', () => {
  it('is a log that replays without trouble, every row one that a store may hold', () => {
    const read = JSON.parse(JSON.stringify(rows)) as unknown[];
    const records = read.map((row) => readRecord(row, MACHINE_VERSION).record);
    expect(records).toEqual(rows);
    const { kitchen, trouble } = replay(rows, MACHINES);
    expect(trouble).toBeNull();
    expect(positionOf(kitchen)).toEqual(rows.at(-1)!.position);
  });

  it('is the same for the same seed, and another for another', () => {
    expect(bakedYear({ ...ASK, bakes: 2 })).toEqual(bakedYear({ ...ASK, bakes: 2 }));
    expect(bakedYear({ ...ASK, bakes: 2 })).not.toEqual(bakedYear({ ...ASK, bakes: 2, seed: 6 }));
  });

  it('has every end a bake may have, and one without a reading', () => {
    const hows = pages.map(({ end }) => end.how);
    expect(new Set(hows)).toEqual(new Set(['handedOver', 'open', 'early', 'tray']));
    expect(hows.filter((how) => how === 'open')).toHaveLength(1);
    expect(pages.filter(({ readings }) => readings.length === 0)).toHaveLength(1);
    expect(new Set(pages.map(({ name }) => name)).size).toBe(3);
  });

  it('has whole bakes measured from the mix to the cool loaf', () => {
    const whole = pages.filter(({ end, readings }) => end.how === 'handedOver' && readings.length);
    expect(whole.length).toBeGreaterThan(6);
    for (const { readings, loads, weights, note, stages } of whole) {
      const of = new Set(readings.map(({ reading }) => reading.what));
      expect([...of]).toEqual(
        expect.arrayContaining(['doughTemperature', 'rise', 'edge', 'coreTemperature', 'crust']),
      );
      expect(loads.every(({ out }) => out !== null)).toBe(true);
      expect(weights.loss).toBeGreaterThan(10);
      expect(weights.loss).toBeLessThan(18);
      expect(stages[0]!.stage).toBe('read.plan');
      expect(note).not.toBe('');
    }
  });

  it('has take-backs, corrections, hushed calls and cut loaves', () => {
    expect([...kinds]).toEqual(
      expect.arrayContaining(['takeBack', 'correct', 'heard', 'cut', 'reading', 'press', 'start']),
    );
    expect(pages.some(({ readings }) => readings.some(({ was }) => was.length > 0))).toBe(true);
  });

  it('goes over a year, warmer in summer, and ends before it is said to', () => {
    const starts = rows.flatMap(({ fact }) => (fact.kind === 'start' ? [fact] : []));
    expect(starts.at(-1)!.at - starts[0]!.at).toBeGreaterThan(300 * DAY);
    const inMonths = (...months: readonly number[]): number => {
      const some = starts.filter(({ at }) => months.includes(new Date(at).getUTCMonth()));
      return some.reduce((sum, { kitchen }) => sum + kitchen, 0) / some.length;
    };
    expect(inMonths(5, 6, 7)).toBeGreaterThan(inMonths(11, 0, 1) + 3);
    const until = Date.UTC(2026, 2, 6);
    const early = bakedYear({ bakes: 3, seed: 9, until, leftOpen: false });
    expect(early.at(-1)!.fact.at).toBeLessThan(until);
    expect(makeBakeList()(early).bakes.every(({ to }) => to !== null)).toBe(true);
  });
});
