import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparePlot, type Compared } from '../../../../src/core/log/plots/compare-plot.ts';
import { logPlots } from '../../../../src/core/speech/words/log-plots.ts';
import type { DrawnPart } from '../../../../src/core/log/drawing.ts';
import { DAY } from '../../../../src/core/units.ts';
import { expectDrawnWell, ROOM, rooms } from './support/drawn-well.ts';
import { LAST, past, pastBakes, TOLD } from './support/past-bakes.ts';

const curve = fc.record({
  told: fc
    .array(
      fc.record({
        theta: fc.double({ min: 0, max: 9, noNaN: true }),
        percent: fc.double({ min: -5, max: 200, noNaN: true }),
      }),
      { maxLength: 6 },
    )
    .map((spots) => spots.toSorted((a, b) => a.theta - b.theta)),
  end: fc.double({ min: 0, max: 9, noNaN: true }),
  likely: fc.constant([
    { theta: 0, percent: 0 },
    { theta: 4, percent: 60 },
    { theta: 9, percent: 180 },
  ]),
});
/** A page of them: six at most, and one of them may be the one that was opened. */
const compared = fc
  .record({
    bakes: pastBakes,
    curves: fc.array(fc.option(curve, { nil: null, freq: 5 }), { minLength: 6, maxLength: 6 }),
    chosen: fc.nat({ max: 6 }),
  })
  .map(({ bakes, curves, chosen }): readonly Compared[] =>
    bakes.slice(0, 6).map((bake, n) => {
      const its = curves[n]!;
      // What was told came before the end.
      const end = its && Math.max(its.end, 9);
      return { ...bake, curve: its && { ...its, end: end! }, chosen: n === chosen };
    }),
  );

const one = (said: Partial<Compared> = {}): Compared => ({
  ...past(),
  chosen: false,
  curve: {
    told: [
      { theta: 2, percent: 25 },
      { theta: 4, percent: 75 },
    ],
    likely: [
      { theta: 0, percent: 0 },
      { theta: 4, percent: 70 },
    ],
    end: 4,
  },
  ...said,
});
const drawn = (bakes: readonly Compared[]): readonly DrawnPart[] =>
  comparePlot(bakes, TOLD).draw(ROOM).parts;
const dots = (parts: readonly DrawnPart[]) =>
  parts.flatMap((part) => (part.kind === 'mark' && part.shape === 'dot' ? [part.at] : []));

describe('bakes of one bread side by side', () => {
  it('are drawn within their room, no word on another', () => {
    fc.assert(
      fc.property(compared, rooms, (bakes, room) =>
        expectDrawnWell(comparePlot(bakes, TOLD).draw(room), room),
      ),
    );
  });

  it('have a panel and a row each, and every rise that was told a mark', () => {
    fc.assert(
      fc.property(compared, (bakes) => {
        const { table, draw } = comparePlot(bakes, TOLD);
        const { parts } = draw(ROOM);
        expect(table.rows.length).toBe(bakes.length);
        const told = bakes.flatMap((bake) => bake.curve?.told ?? []).length;
        const good = bakes.filter(({ turned }) => turned === 'good').length;
        expect(dots(parts).length).toBe(told + good);
        // Every date is written, and so is how each turned out.
        const texts = parts.flatMap((part) => (part.kind === 'text' ? [part.text] : []));
        for (const { at } of bakes) expect(texts).toContain(TOLD.date(at));
      }),
    );
  });

  it('share their axes: alike doughs stand alike in their panels', () => {
    const spots = dots(drawn([one({ turned: 'untold' }), one({ turned: 'untold' })]));
    const [first, second] = [spots.slice(0, 2), spots.slice(2)];
    const shift = second[0]![0] - first[0]![0];
    expect(shift).toBeGreaterThan(20);
    expect(second[1]![0] - first[1]![0]).toBeCloseTo(shift, 6);
    expect(second.map(([, y]) => y)).toEqual(first.map(([, y]) => y));
  });

  it('show the chosen one bold, and only that', () => {
    const bold = (bakes: readonly Compared[]): number =>
      drawn(bakes).filter((part) => part.kind === 'line' && part.weight === 'bold').length;
    expect(bold([one(), one({ chosen: true }), one()])).toBe(1);
    expect(bold([one(), one()])).toBe(0);
  });

  it('tell each by date, how it turned out, its rise, its hours and its dough', () => {
    const { table } = comparePlot(
      [
        one({ bulkHours: 5.25 }),
        one({
          ...{ at: LAST - 7 * DAY, turned: 'untold', rise: null, bulkHours: null, dough: null },
          ...{ coldHours: null, curve: null },
        }),
      ],
      TOLD,
    );
    expect(table.rows).toEqual([
      ['3 May 2031', 'good', '75 %', '5\u00a0h\u00a015', '25 °C', '14\u00a0h'],
      ['26 Apr 2031', 'not told', '–', '–', '–', '–'],
    ]);
  });

  it('are said in a sentence or two; one alone, and none', () => {
    const other = one({ rise: { percent: 50, doubt: 10, atLeast: false, before: 0 } });
    expect(comparePlot([one({ chosen: true }), other], TOLD).says).toBe(
      'Bakes side by side: two. At the end of bulk they had risen fifty, five zero, percent to ' +
        'seventy-five percent. The chosen one had risen seventy-five percent.',
    );
    expect(comparePlot([one({ chosen: true })], TOLD).says).toBe(
      'Bakes side by side: one. At the end of bulk it had risen seventy-five percent.',
    );
    expect(comparePlot([], TOLD).says).toBe(logPlots.compare.none);
    expect(comparePlot([], TOLD).draw(ROOM).parts).toEqual([]);
  });
});
