import { describe, expect, it } from 'vitest';
import { allRows } from './all-rows.ts';
import { difference, scores } from './measure.ts';
import { misses } from './misses.ts';
import { report } from './report.ts';
import type { Row } from './row.ts';
import { RELATIVE, TOLERANCES, type Model } from './tolerances.ts';

const ROWS = allRows();
const MODELS = Object.keys(TOLERANCES) as Model[];
const rowsOfModel = (model: Model) => ROWS.filter((row) => row.model === model);

/** The row with our value just further off than its model allows. */
const spoilt = (row: Row): Row => {
  const end = typeof row.expected === 'number' ? row.expected : row.expected[1];
  const beyond = TOLERANCES[row.model].most * 1.01 + 1e-6;
  const step = RELATIVE.includes(row.model) ? (beyond / 100) * Math.abs(end) : beyond;
  return { ...row, ours: end + step };
};

describe.each(MODELS)('%s', (model) => {
  it.each(rowsOfModel(model))('$what', (row) => {
    expect(difference(row)).toBeLessThanOrEqual(TOLERANCES[model].most);
  });

  it('is within its tolerance on the whole', () => {
    expect(scores(rowsOfModel(model))).toMatchObject([{ model, ok: true }]);
  });

  it('would be found out by any one row that is beyond it, or is no number', () => {
    const rows = rowsOfModel(model);
    for (const [i, row] of rows.entries()) {
      for (const bad of [spoilt(row), { ...row, ours: NaN }]) {
        const [score] = scores(rows.with(i, bad));
        expect(score?.ok, row.what).toBe(false);
      }
    }
  });
});

describe('the table', () => {
  it('names a source beside every row, and calls none what has none', () => {
    for (const { mark, source, what } of ROWS) {
      expect(source.length, what).toBeGreaterThan(2);
      if (/no source|worked|are judgement/.test(source)) expect(mark, what).not.toBe('outside');
    }
  });

  it('is not made of ports alone: measurement and print are in it', () => {
    expect(ROWS.filter(({ mark }) => mark === 'outside').length).toBeGreaterThan(15);
  });

  it('prints every row with its difference and its mark, and the tolerance of every model', () => {
    const text = report(ROWS);
    for (const { what, source } of ROWS) {
      const line = text.split('\n').find((l) => l.includes(what) && l.includes(source));
      expect(line, what).toBeDefined();
    }
    for (const model of MODELS) expect(text).toMatch(new RegExp(`within +${model}`));
    expect(text).not.toContain('BEYOND');
    expect(report(ROWS.with(0, spoilt(ROWS[0]!)))).toContain('BEYOND');
  });

  it('would refuse a rate that does not fade in the cold', () => {
    const row = ROWS.find(({ what }) => what === 'γ(5.7)/γ(28)')!;
    const unfaded = 2.8 ** ((5.7 - 28) / 10); // .101
    expect(difference({ ...row, ours: unfaded })).toBeGreaterThan(0.01);
  });
});

describe('known misses', () => {
  it.each(misses())('$what: missed, and its doubt is told', ({ ours, expected, within, doubt }) => {
    expect(Math.abs(ours - expected)).toBeGreaterThan(within);
    expect(doubt).not.toBeNull();
  });
});
