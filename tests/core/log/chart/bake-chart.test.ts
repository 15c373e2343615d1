import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  PANELS,
  bakePanels,
  type ChartedBake,
} from '../../../../src/core/log/chart/bake-panels.ts';
import { bakeChart, type ChartedAs } from '../../../../src/core/log/chart/bake-chart.ts';
import {
  boxOf,
  overlaps,
  type Box,
  type DrawnText,
} from '../../../../src/core/log/chart/labels.ts';
import { MARK_REACH } from '../../../../src/core/log/chart/mark-paths.ts';
import { STAGE_TICK } from '../../../../src/core/log/chart/stage-ticks.ts';
import type { Drawing, DrawingRoom, DrawnPart } from '../../../../src/core/log/drawing.ts';
import { anyBake, clockOf, FROM } from './support/any-bake.ts';

const asOf = (heat: 'C' | 'F' = 'C', twelve = false): ChartedAs => ({
  units: { heat, weight: 'g' },
  clock: clockOf(twelve),
  nameOf: (_, stage) => stage,
});

/** A place on any tablet, or on paper: never lower than four lines a panel. */
const room: fc.Arbitrary<DrawingRoom> = fc
  .record({
    width: fc.double({ min: 60, max: 300, noNaN: true }),
    height: fc.double({ min: 30, max: 280, noNaN: true }),
    cap: fc.double({ min: 1.5, max: 6, noNaN: true }),
  })
  .map((its) => ({ ...its, letter: its.cap * 0.83 }));
const some = fc.subarray([...PANELS], { minLength: 1 });

const of = <K extends DrawnPart['kind']>({ parts }: Drawing, kind: K) =>
  parts.filter((part): part is Extract<DrawnPart, { kind: K }> => part.kind === kind);

/** The straight line through two points holds all others: values that stand on one scale. */
function onOneScale(pairs: readonly (readonly [value: number, mm: number])[]): void {
  const a = pairs.reduce((least, one) => (one[0] < least[0] ? one : least));
  const b = pairs.reduce((most, one) => (one[0] > most[0] ? one : most));
  const off = pairs.filter(([value, mm]) => {
    const share = b[0] === a[0] ? 0 : (value - a[0]) / (b[0] - a[0]);
    return Math.abs(mm - a[1] - share * (b[1] - a[1])) > 1e-4;
  });
  expect(off).toEqual([]);
}

const draw = (bake: ChartedBake, names: readonly (typeof PANELS)[number][], its: DrawingRoom) =>
  bakeChart(bake, names, asOf())?.draw(its) ?? null;

/** The calls that the table has. */
const shownCalls = (bake: ChartedBake, names: readonly (typeof PANELS)[number][]) => {
  const told = bakeChart(bake, names, asOf())!.table.rows.map(([, what]) => what);
  return bake.page.calls.filter(({ stage }) => told.includes(`Call: ${stage}`));
};

describe('the drawing of a bake', () => {
  it('keeps every word in the drawing and none over another, whatever the bake and the room', () => {
    let drawn = 0;
    fc.assert(
      fc.property(anyBake, room, some, fc.boolean(), (bake, its, names, twelve) => {
        const chart = bakeChart(bake, names, asOf(twelve ? 'F' : 'C', twelve));
        if (chart === null) return;
        drawn += 1;
        const texts = of(chart.draw(its), 'text');
        const boxes = texts.map((text) => ({ text: text.text, ...boxOf(text, its) }));
        const isOut = ({ left, right, top, bottom }: Box): boolean =>
          left < -1e-6 || right > its.width + 1e-6 || top < -1e-6 || bottom > its.height + 1e-6;
        const wrong = boxes.flatMap((box, n) => [
          ...(isOut(box) ? [`${box.text} runs out`] : []),
          ...boxes
            .slice(n + 1)
            .filter((other) => overlaps(box, other))
            .map((other) => `${box.text} over ${other.text}`),
        ]);
        expect(wrong).toEqual([]);
        expect(texts.every(({ text }) => text !== '')).toBe(true);
      }),
      { numRuns: 600 },
    );
    expect(drawn).toBeGreaterThan(300);
  });

  it('keeps every mark, line and area in the drawing', () => {
    fc.assert(
      fc.property(anyBake, room, some, (bake, its, names) => {
        const drawing = draw(bake, names, its);
        if (drawing === null) return;
        const spots = drawing.parts.flatMap((part) =>
          part.kind === 'line' || part.kind === 'area' ? part.at : [],
        );
        const isIn = ([x, y]: readonly [number, number], pad: number): boolean =>
          x >= pad - 1e-6 && x <= its.width - pad + 1e-6 && y >= -1e-6 && y <= its.height + 1e-6;
        expect(spots.filter((spot) => !isIn(spot, 0))).toEqual([]);
        expect(of(drawing, 'mark').filter(({ at }) => !isIn(at, MARK_REACH))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('has a mark for each value and each call, on one time and each panel on one scale', () => {
    fc.assert(
      fc.property(anyBake, room, some, (bake, its, names) => {
        const drawing = draw(bake, names, its);
        if (drawing === null) return;
        const found = bakePanels(bake, asOf().units);
        const panels = names.flatMap((name) => found[name] ?? []);
        const points = panels.map(({ series }) => series.flatMap((one) => one.points));
        const marks = of(drawing, 'mark');
        const ends = points.flat().map(({ at }) => at);
        const [first, last] = [Math.min(...ends), Math.max(...ends)];
        // Calls of the time that is shown, and no other, stand in a strip of their own.
        const calls = shownCalls(bake, names);
        for (const { due, id } of bake.page.calls)
          if (due >= first && due <= last) expect(calls.map((one) => one.id)).toContain(id);
        const all = [...points.flat(), ...calls.map(({ due }) => ({ at: due, value: 0 }))];
        expect(marks).toHaveLength(all.length);
        onOneScale(all.map(({ at }, n) => [at - FROM, marks[n]!.at[0]]));
        let n = 0;
        for (const panel of points) {
          const own = marks.slice(n, (n += panel.length));
          if (panel.length > 0) onOneScale(panel.map(({ value }, k) => [value, own[k]!.at[1]]));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has one row for each mark, step and wanted rise, and no other', () => {
    fc.assert(
      fc.property(anyBake, some, (bake, names) => {
        const chart = bakeChart(bake, names, asOf());
        if (chart === null) return;
        const { heads, rows } = chart.table;
        const drawing = chart.draw({ width: 180, height: 120, cap: 3, letter: 2.5 });
        const wanted = rows.filter(([, what]) => what === 'Wanted rise');
        const steps = rows.filter(([, what]) => what!.startsWith('Step: '));
        const bottom = Math.max(...of(drawing, 'line').map(({ at }) => at[0]![1]));
        // Down to the time's line where a part begins, else a short tick.
        const ruled = of(drawing, 'line').filter(
          ({ at: [a, b] }) =>
            a![0] === b![0] &&
            a![1] < bottom &&
            (b![1] === bottom || Math.abs(b![1] - a![1] - STAGE_TICK) < 1e-9),
        );
        expect(ruled).toHaveLength(steps.length);
        expect(rows).toHaveLength(of(drawing, 'mark').length + steps.length + wanted.length);
        const widths = of(drawing, 'line').map(({ at }) => at.at(-1)![0] - at[0]![0]);
        const levels = of(drawing, 'line').filter(
          ({ at, dashed }) =>
            dashed && at.length === 2 && at[1]![0] - at[0]![0] === Math.max(...widths),
        );
        expect(levels.length > 0).toBe(wanted.length > 0);
        // Where four parts crowd each other its words may have no room; its row has them.
        if (of(drawing, 'text').some(({ text }) => text.startsWith('Wanted')))
          expect(wanted).not.toEqual([]);
        expect(rows.every((row) => row.length === heads.length)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('marks what was kept as odd with a cross, and says so in its row', () => {
    fc.assert(
      fc.property(anyBake, (bake) => {
        const chart = bakeChart(bake, ['heat', 'rise'], asOf());
        if (chart === null) return;
        const drawing = chart.draw({ width: 180, height: 120, cap: 3, letter: 2.5 });
        const crosses = of(drawing, 'mark').filter(({ shape }) => shape === 'cross').length;
        expect(chart.table.rows.filter(([, what]) => what!.endsWith(', odd'))).toHaveLength(
          crosses,
        );
      }),
    );
  });
});

const texts = (drawing: Drawing): string[] =>
  of(drawing, 'text').map(({ text }: DrawnText) => text);

describe('on a tablet', () => {
  const tablet: DrawingRoom = { width: 190, height: 75, cap: 3.9, letter: 3.23 };
  const bake = fc.sample(
    anyBake.filter(
      ({ page }) =>
        page.readings.filter(({ reading }) => reading.what === 'doughTemperature').length > 1,
    ),
    { numRuns: 20, seed: 7 },
  );

  it('tells in words what its lines are, where there is a line of dough', () => {
    for (const one of bake) {
      const found = texts(draw(one, ['heat'], tablet)!);
      expect(found).toContain('Warmth, °C');
      expect(found).toContain('Dough');
    }
  });
});

describe('a bake of which nothing was measured', () => {
  it('has no chart of readings, and a chart of what was believed alone', () => {
    const [bake] = fc.sample(
      anyBake.filter(({ page, beliefs }) => page.readings.length === 0 && beliefs !== null),
      { numRuns: 1, seed: 3 },
    );
    expect(bakeChart(bake!, ['heat', 'rise', 'lived'], asOf())).toBeNull();
    expect(bakeChart(bake!, PANELS, asOf())?.says).toMatch(/^The starter/);
  });
});
