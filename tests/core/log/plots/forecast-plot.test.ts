import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forecastPlot } from '../../../../src/core/log/plots/forecast-plot.ts';
import { forecastTrust, isHeld } from '../../../../src/core/log/plots/forecast-trust.ts';
import type { PastBake } from '../../../../src/core/log/plots/past-bake.ts';
import { logPlots } from '../../../../src/core/speech/words/log-plots.ts';
import { DAY, HOUR, MINUTE } from '../../../../src/core/units.ts';
import { expectDrawnWell, marksOf, ROOM, rooms } from './support/drawn-well.ts';
import { LAST, past, pastBakes, TOLD } from './support/past-bakes.ts';

/** Ready so many minutes after the told hour, in a window from an hour before it to two after. */
const ready = (late: number, over = false): NonNullable<PastBake['forecast']> => {
  const likely = LAST + 4 * HOUR;
  return {
    ...{ told: LAST, likely, ended: likely + late * MINUTE, late, over },
    window: { earliest: likely - HOUR, latest: likely + 2 * HOUR },
  };
};
const bakes = (lates: readonly number[]): readonly PastBake[] =>
  lates.map((late, n) => past({ at: LAST - n * DAY, forecast: ready(late) }));
const plain = (lates: readonly number[]) => forecastPlot(bakes(lates), bakes(lates), TOLD).plain;

describe('what first forecasts were worth', () => {
  it('is within its window with both its ends, and gone over nobody knows when', () => {
    expect([-61, -60, 0, 120, 121].map((late) => isHeld(ready(late)))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    // Found over within the window it may have been ready before it; found over before it, it was not held.
    expect([30, 300, -61].map((late) => isHeld(ready(late, true)))).toEqual([null, null, false]);
    expect(isHeld({ ...ready(0), window: null })).toBeNull();
  });

  it('misses by the mean of the last ten, whichever way each missed', () => {
    const trust = forecastTrust([
      ...Array(5).fill(ready(-20)),
      ...Array(5).fill(ready(30)),
      ready(600),
    ]);
    expect(trust).toEqual({
      known: 11,
      over: 0,
      last: 10,
      miss: 25,
      windows: 11,
      held: 10,
      later: 6,
      sooner: 5,
    });
  });

  it('counts every bake once: held or not, later, sooner or on the minute', () => {
    fc.assert(
      fc.property(pastBakes, (all) => {
        const forecasts = all.flatMap(({ forecast }) => (forecast === null ? [] : [forecast]));
        const { known, over, windows, held, later, sooner, last } = forecastTrust(forecasts);
        expect(known + over).toBe(forecasts.length);
        expect(held).toBeLessThanOrEqual(windows);
        expect(windows).toBeLessThanOrEqual(known);
        expect(later + sooner).toBeLessThanOrEqual(known);
        expect(last).toBe(Math.min(10, known));
      }),
    );
  });

  it('is told plainly: by how much it missed, how often its window held, and which way it leans', () => {
    expect(plain([20, -30, 25, -25, 300, -200])).toEqual([
      'In the last 6 bakes the first forecast missed by 1\u00a0h\u00a040 on average.',
      'Most bakes were ready within their window: 4 of 6.',
      'It is meant to hold four times in five.',
    ]);
    expect(plain([20, 30, 150, 160, 170, 180])).toEqual([
      'In the last 6 bakes the first forecast missed by 1\u00a0h\u00a058 on average.',
      '2 of 6 bakes were ready within their window.',
      'It is meant to hold four times in five.',
      'Most doughs took longer than told.',
    ]);
    expect(plain([-90, -90, -90, -90, -90])).toContain(
      'None of 5 bakes was ready within its window.',
    );
    expect(plain([-90, -90, -90, -90, -90])).toContain('Most doughs were ready sooner than told.');
  });

  it('says that fewer than five are too few, and tells no average of them', () => {
    expect(plain([10, 20, 30, 40])).toEqual([logPlots.forecast.few, 'So far: 4. It takes 5.']);
    expect(plain([])).toEqual([logPlots.forecast.none]);
  });

  it('goes by all bakes where only some are drawn', () => {
    const all = bakes([0, 0, 0, 0, 0, 0]);
    const { plain: told, table } = forecastPlot(all.slice(0, 2), all, TOLD);
    expect([table.rows.length, told[0]]).toEqual([
      2,
      'In the last 6 bakes the first forecast missed by 0\u00a0min on average.',
    ]);
  });

  it('tells apart what was found gone over: it is in no average', () => {
    const all = [...bakes([10, 10, 10, 10, 10]), past({ forecast: ready(500, true) })];
    const { plain: told } = forecastPlot(all, all, TOLD);
    expect(told[0]).toContain('missed by 10\u00a0min');
    expect(told).toContain(logPlots.forecast.overLeftOne);
  });
});

describe('the plot of forecasts', () => {
  it('is drawn within its room, no word on another', () => {
    fc.assert(
      fc.property(pastBakes, rooms, (all, room) =>
        expectDrawnWell(forecastPlot(all, all, TOLD).draw(room), room),
      ),
    );
  });

  it('has a row for every mark, and a mark of its shape for every row', () => {
    fc.assert(
      fc.property(pastBakes, (all) => {
        const { draw, table, marks } = forecastPlot(all, all, TOLD);
        const drawing = draw(ROOM);
        const rows = (cells: readonly string[]): number =>
          table.rows.filter((row) => cells.includes(row.at(-1)!)).length;
        expect(table.rows.length).toBe(marks);
        expect(marksOf(drawing, 'dot')).toBe(rows([logPlots.forecast.yes, logPlots.unknown]));
        expect(marksOf(drawing, 'triangle')).toBe(rows([logPlots.forecast.no]));
        expect(marksOf(drawing, 'square')).toBe(rows([logPlots.forecast.overCell]));
      }),
    );
  });

  it('writes how far off each was, and the window it was told in', () => {
    expect(
      forecastPlot(bakes([0, 75, -20]), [], TOLD).table.rows.map((row) => row.slice(2)),
    ).toEqual([
      ['as told', '1\u00a0h sooner – 2\u00a0h later', 'yes'],
      ['1\u00a0h\u00a015 later', '1\u00a0h sooner – 2\u00a0h later', 'yes'],
      ['20\u00a0min sooner', '1\u00a0h sooner – 2\u00a0h later', 'yes'],
    ]);
  });
});
