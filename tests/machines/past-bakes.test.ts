import { beforeAll, describe, expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { bulkEnd, coldHours } from '../../src/core/log/bulk-end.ts';
import { bakeSpans, type BakeSpan, type Spans } from '../../src/core/log/plots/bake-spans.ts';
import { bulkCurve } from '../../src/core/log/plots/bulk-curve.ts';
import { pastBake, type PastBake } from '../../src/core/log/plots/past-bake.ts';
import { PLOT_TURNS, plotTurn, TURN_SHAPES } from '../../src/core/log/plots/plot-turn.ts';
import { TURNED_OUT } from '../../src/core/log/turned-out.ts';
import { makeBakeList, type ListedBake } from '../../src/core/log/bake-list.ts';
import type { CutRead } from '../../src/core/records/cut-read.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { bakedYear } from './support/baked-year.ts';
import { Hand } from './support/hand.ts';
import { at, walkTo, walkToEnd } from './support/onward.ts';

const spansOf = (records: readonly LogRecord[]): Spans => {
  const steps = bakeSpans(records);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
};
const lineOf = (lines: readonly ListedBake[], { start }: BakeSpan): ListedBake =>
  lines.find((line) => line.start === start.id)!;
const pastOf = (records: readonly LogRecord[]): readonly PastBake[] => {
  const { spans, withdrawn } = spansOf(records);
  const lines = makeBakeList()(records).bakes;
  return spans.map((span) => pastBake(span, withdrawn, lineOf(lines, span).turned));
};

describe('the bakes of a year, for the plots', () => {
  let rows: readonly LogRecord[];
  beforeAll(() => {
    rows = bakedYear({ bakes: 12, seed: 5 });
  }, 30_000);

  it('are all of the list, in its order', () => {
    const { spans } = spansOf(rows);
    expect(spans.map(({ start }) => start.id)).toEqual(
      makeBakeList()(rows).bakes.map(({ start }) => start),
    );
    expect(spans.filter(({ over }) => !over)).toHaveLength(1);
  });

  it('tell what the page of each tells, though they read no row but its own', () => {
    const { spans, withdrawn } = spansOf(rows);
    const lines = makeBakeList()(rows).bakes;
    expect(spans.length).toBe(12);
    for (const span of spans) {
      const line = lineOf(lines, span);
      const past = pastBake(span, withdrawn, line.turned);
      const page = bakePage(rows, span.start.bake, { begun: span.start.id })!;
      const end = bulkEnd(page);
      expect(past.rise, past.start).toEqual(end?.rise ?? null);
      expect(past.bulkHours).toBe(end?.hours ?? null);
      expect(past.coldHours).toBe(coldHours(page));
      expect([past.name, past.formula, past.at]).toEqual([line.name, line.formula, line.at]);
    }
  });

  it('read the long log in pieces, so that a press may come between', () => {
    const long = Array.from({ length: 5 }, () => rows).flat();
    const steps = bakeSpans(long);
    let pauses = 0;
    while (steps.next().done !== true) pauses += 1;
    expect(pauses).toBe(Math.floor(long.length / 2_000));
  });

  it('rise along their clock as they were told to', () => {
    const { spans, withdrawn } = spansOf(rows);
    const curves = spans.flatMap((span) => bulkCurve(span, withdrawn) ?? []);
    expect(curves.length).toBeGreaterThan(8);
    for (const { told, likely, end } of curves) {
      expect(likely[0]!.theta).toBe(0);
      expect(likely.at(-1)!.theta).toBeCloseTo(end, 9);
      likely.slice(1).forEach(({ percent, theta }, n) => {
        expect(theta).toBeGreaterThan(likely[n]!.theta);
        expect(percent).toBeGreaterThan(likely[n]!.percent - 1);
      });
      for (const { theta } of told) expect(theta).toBeLessThanOrEqual(end + 1e-9);
    }
  });
});

describe('a bake for the plots', () => {
  const only = (hand: Hand): PastBake => pastOf(hand.records)[0]!;

  it('has its starter as it was believed in the end, and whether it was seen at all', () => {
    const hand = at(new Hand({ wait: waitFor }), 'bulk.proving');
    const before = only(hand);
    expect(before.taught).toBe(false);
    hand.turn(60);
    hand.measure('a', { what: 'rise', percent: 80, of: 'dough' });
    const { belief, taught } = only(hand);
    expect(taught).toBe(true);
    expect(belief!.mean).toBeGreaterThan(before.belief!.mean);
  });

  it('is one of each start that stands, and none of one that was taken back', () => {
    const hand = new Hand();
    hand.start('a');
    hand.takeBack();
    hand.start('a', 'cool.handOver');
    walkToEnd(hand);
    hand.start('a');
    expect(pastOf(hand.records).map(({ over }) => over)).toEqual([false, true]);
  });

  it('is over again once its last press was taken back and done anew', () => {
    const hand = at(new Hand(), 'cool.note', 'oven.queued');
    hand.press('a', 'noted', { text: 'under' });
    expect(only(hand)).toMatchObject({ over: true, turned: 'under' });
    hand.takeBack();
    expect(only(hand)).toMatchObject({ over: false, turned: 'untold' });
    hand.press('a', 'noted', { text: 'good' });
    expect(only(hand)).toMatchObject({ over: true, turned: 'good' });
  });

  it('has no curve where its mix was not seen, or its bulk did not end', () => {
    const { spans, withdrawn } = spansOf(at(new Hand({ wait: waitFor }), 'bulk.look').records);
    expect(bulkCurve(spans[0]!, withdrawn)).toBeNull();
    const joined = new Hand({ wait: waitFor });
    joined.start('a', 'bulk.proving');
    walkTo(joined, 'a', 'bulk.look').press('a', 'bulkReady');
    const of = spansOf(joined.records);
    expect(bulkCurve(of.spans[0]!, of.withdrawn)).toBeNull();
  });

  it('puts a rise further along its clock the warmer the dough was', () => {
    const [cool, warm] = [20, 27].map((celsius) => {
      const hand = at(new Hand({ wait: waitFor }), 'mix.temperature');
      hand.dough('a', celsius);
      walkTo(hand, 'a', 'bulk.proving');
      hand.measure('a', { what: 'rise', percent: 40, of: 'dough' });
      hand.press('a', 'bulkReady');
      const { spans, withdrawn } = spansOf(hand.records);
      return bulkCurve(spans[0]!, withdrawn)!.told[0]!.theta;
    });
    expect(warm!).toBeGreaterThan(cool! * 1.2);
  });
});

describe('how a bake turned out, on a plot', () => {
  const cut = (read: Partial<CutRead>): CutRead => ({
    ...{ says: 'causes', causes: [], change: null, because: [], model: 'm', ...read },
  });

  it('is in as few kinds as there are shapes to keep apart', () => {
    const plotted = TURNED_OUT.map((turned) => plotTurn(turned, null));
    expect(plotted).toEqual([
      ...['good', 'under', 'over', 'other', 'other'],
      ...['untold', 'untold', 'untold'],
    ]);
    expect(new Set(Object.values(TURN_SHAPES)).size).toBe(PLOT_TURNS.length);
  });

  it('is something else where only the cut loaf spoke, and spoke of that', () => {
    expect(plotTurn('done', cut({ causes: [{ cause: 'cutHot', sure: 'likely' }] }))).toBe('other');
    expect(plotTurn('done', cut({ causes: [{ cause: 'cutHot', sure: 'hard' }] }))).toBe('untold');
    expect(plotTurn('done', cut({ says: 'look' }))).toBe('untold');
    expect(plotTurn('good', cut({ causes: [{ cause: 'cutHot', sure: 'likely' }] }))).toBe('good');
  });
});
