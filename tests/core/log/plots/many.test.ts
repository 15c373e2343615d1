import { expect, it } from 'vitest';
import { comparePlot } from '../../../../src/core/log/plots/compare-plot.ts';
import { endedPlot } from '../../../../src/core/log/plots/ended-plot.ts';
import { forecastPlot } from '../../../../src/core/log/plots/forecast-plot.ts';
import { vigourPlot } from '../../../../src/core/log/plots/vigour-plot.ts';
import { DAY } from '../../../../src/core/units.ts';
import { expectDrawnWell, ROOM } from './support/drawn-well.ts';
import { LAST, past, TOLD } from './support/past-bakes.ts';

/** Bakes as a page shows them at most, each somewhere else. */
const many = Array.from({ length: 60 }, (_, n) =>
  past({
    start: `s${n}`,
    at: LAST - n * 7 * DAY,
    coldHours: n % 17,
    rise: { percent: 30 + ((n * 7) % 80), doubt: 10, atLeast: false, before: 0 },
  }),
);

it('draws a full page with a bounded number of strokes', () => {
  const curve = {
    told: Array.from({ length: 12 }, (_, n) => ({ theta: n / 3, percent: n * 8 })),
    likely: Array.from({ length: 25 }, (_, n) => ({ theta: n / 6, percent: n * 4 })),
    end: 4,
  };
  const drawings = [
    endedPlot(many, TOLD).draw(ROOM),
    vigourPlot(many, TOLD).draw(ROOM),
    forecastPlot(many, many, TOLD).draw(ROOM),
    comparePlot(
      many.slice(0, 6).map((bake) => ({ ...bake, curve, chosen: false })),
      TOLD,
    ).draw(ROOM),
  ];
  for (const drawing of drawings) {
    expectDrawnWell(drawing, ROOM);
    // Three of each bake, and the frame with its words.
    expect(drawing.parts.length).toBeGreaterThan(60);
    expect(drawing.parts.length).toBeLessThan(3 * 60 + 60);
  }
});
