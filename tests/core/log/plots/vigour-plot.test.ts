import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vigourPlot } from '../../../../src/core/log/plots/vigour-plot.ts';
import { logPlots } from '../../../../src/core/speech/words/log-plots.ts';
import { DAY } from '../../../../src/core/units.ts';
import { expectDrawnWell, ROOM, rooms } from './support/drawn-well.ts';
import { LAST, past, pastBakes, TOLD } from './support/past-bakes.ts';

describe('the starter over the seasons', () => {
  it('is drawn within its room, no word on another', () => {
    fc.assert(
      fc.property(pastBakes, rooms, (bakes, room) =>
        expectDrawnWell(vigourPlot(bakes, TOLD).draw(room), room),
      ),
    );
  });

  it('has of every row a mark of the starter, its doubt as a bar, and one of the kitchen', () => {
    fc.assert(
      fc.property(pastBakes, (bakes) => {
        const plot = vigourPlot(bakes, TOLD);
        const { parts } = plot.draw(ROOM);
        const rows = bakes.filter(({ belief }) => belief !== null);
        const marks = parts.filter((part) => part.kind === 'mark');
        const explained = rows.length === 0 ? 0 : rows.some(({ taught }) => !taught) ? 3 : 2;
        expect(plot.table.rows.length).toBe(rows.length);
        expect(plot.marks).toBe(rows.length);
        expect(marks.length - explained).toBe(2 * rows.length);
      }),
    );
  });

  it('tells a speed to a twentieth, with one sd either way, and the kitchen in the baker’s unit', () => {
    const bakes = [past({ belief: { mean: Math.log(1.1), sd: 0.1 }, kitchen: 20 })];
    expect(vigourPlot(bakes, TOLD).table.rows).toEqual([
      ['3 May 2031', 'Lane wheat', '1.1×', '1× to 1.2×', '20 °C'],
    ]);
    const plot = vigourPlot(bakes, { ...TOLD, units: { heat: 'F', weight: 'oz' } });
    expect(plot.table.rows[0]!.at(-1)).toBe('68 °F');
    expect(plot.says).toBe(
      'The starter was last at one point one times the usual speed, about. ' +
        'The kitchen was at sixty-eight degrees Fahrenheit.',
    );
  });

  it('puts a faster starter higher, and what a bake did not see in another shape', () => {
    const bakes = [
      past({ belief: { mean: 0.4, sd: 0.1 } }),
      past({ at: LAST - 7 * DAY, belief: { mean: -0.4, sd: 0.1 }, taught: false }),
    ];
    const { parts } = vigourPlot(bakes, TOLD).draw(ROOM);
    const at = (shape: string) =>
      parts.findLast((part) => part.kind === 'mark' && part.shape === shape)!.at as [
        number,
        number,
      ];
    expect(at('dot')[1]).toBeLessThan(at('ring')[1] - 5);
    expect(at('dot')[0]).toBeGreaterThan(at('ring')[0] + 50);
  });

  it('says where nothing was told of the starter yet', () => {
    const plot = vigourPlot([past({ belief: null })], TOLD);
    expect([plot.says, plot.marks, plot.draw(ROOM).parts]).toEqual([logPlots.vigour.none, 0, []]);
  });
});
