import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endedPlot } from '../../../../src/core/log/plots/ended-plot.ts';
import { PLOT_TURNS, TURN_SHAPES } from '../../../../src/core/log/plots/plot-turn.ts';
import { logPlots } from '../../../../src/core/speech/words/log-plots.ts';
import { DAY } from '../../../../src/core/units.ts';
import { expectDrawnWell, marksOf, ROOM, rooms } from './support/drawn-well.ts';
import { LAST, past, pastBakes, TOLD } from './support/past-bakes.ts';

const texts = (bakes: Parameters<typeof endedPlot>[0]): readonly string[] =>
  endedPlot(bakes, TOLD)
    .draw(ROOM)
    .parts.flatMap((part) => (part.kind === 'text' ? [part.text] : []));

describe('rise at the end of bulk over hours of cold', () => {
  it('is drawn within its room, no word on another', () => {
    fc.assert(
      fc.property(pastBakes, rooms, (bakes, room) =>
        expectDrawnWell(endedPlot(bakes, TOLD).draw(room), room),
      ),
    );
  });

  it('has a row for every mark and a mark for every row, whatever they turned out', () => {
    fc.assert(
      fc.property(pastBakes, (bakes) => {
        const { draw, table, left } = endedPlot(bakes, TOLD);
        const drawing = draw(ROOM);
        expect(table.rows.length + left).toBe(bakes.length);
        for (const turn of PLOT_TURNS) {
          const rows = table.rows.filter((row) => row.at(-1) === logPlots.turns[turn]);
          expect(marksOf(drawing, TURN_SHAPES[turn])).toBe(rows.length);
        }
      }),
    );
  });

  it('puts a mark higher the more it rose and further the longer it was cold', () => {
    const parts = endedPlot(
      [
        past({ turned: 'good', coldHours: 20 }),
        past({
          turned: 'under',
          coldHours: 10,
          rise: { percent: 30, doubt: 10, atLeast: false, before: 0 },
        }),
      ],
      TOLD,
    ).draw(ROOM).parts;
    const at = (shape: string) =>
      parts.findLast((part) => part.kind === 'mark' && part.shape === shape)!.at as [
        number,
        number,
      ];
    expect(at('dot')[0]).toBeGreaterThan(at('triangle')[0] + 10);
    expect(at('dot')[1]).toBeLessThan(at('triangle')[1] - 5);
  });

  it('leaves out a rise that is too old for an end, and a cold nobody knows', () => {
    const { left, table } = endedPlot(
      [
        past(),
        past({ rise: { percent: 40, doubt: 41, atLeast: false, before: 120 } }),
        past({ rise: null }),
        past({ coldHours: null }),
      ],
      TOLD,
    );
    expect([left, table.rows]).toEqual([3, [['3 May 2031', 'Lane wheat', '75 %', '14 h', 'good']]]);
  });

  it('names the latest by its date, and tells where the good ones lie', () => {
    const bakes = [past(), past({ at: LAST - 7 * DAY, coldHours: 14 })];
    expect(texts(bakes)).toContain('3 May 2031');
    expect(endedPlot(bakes, TOLD).says).toContain('One good bake rose seventy-five percent.');
    const { says } = endedPlot(
      [past(), past({ rise: { percent: 90, doubt: 10, atLeast: true, before: 0 } })],
      TOLD,
    );
    expect(says).toContain('Good bakes rose seventy-five percent to ninety, nine zero, percent.');
  });

  it('is there with nothing in it, and says so', () => {
    const plot = endedPlot([], TOLD);
    expectDrawnWell(plot.draw(ROOM), ROOM);
    expect([plot.says, plot.table.rows]).toEqual([logPlots.ended.none, []]);
  });
});
