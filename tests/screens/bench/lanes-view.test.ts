import { describe, expect, it } from 'vitest';
import { loadPlan } from '../../../src/core/oven/load-plan.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { lanesView, type Read } from '../../../src/screens/bench/pots/lanes-view.ts';

const NOW = Date.UTC(2031, 4, 3, 10, 0);
const MINUTES = { preheat: 60, lidded: 20, open: 25, recovery: 10, loadMinutes: 3 };
const READ: Read = {
  hour: (at) => new Date(at).toISOString().slice(11, 16),
  pot: (lane) => lane,
  number: (loaf) => loaf,
  dropped: [],
  hotAt: () => null,
  lidOn: () => false,
};
/** The first loaf stands in each pot since `ago` minutes, three minutes apart. */
const plan = (pots: number, loaves: number, ago = 15) =>
  loadPlan({
    loaves: Array.from({ length: loaves - pots }, (_, i) => ({
      id: `${pots + i + 1}`,
      grams: 900,
    })),
    pots: Array.from({ length: pots }, (_, i) => ({ id: `pot ${i + 1}`, holds: null })),
    minutes: MINUTES,
    now: NOW,
    standing: Array.from({ length: pots }, (_, i) => {
      const loadAt = NOW + (3 * i - ago) * MINUTE;
      const [lidAt, outAt] = [loadAt + 20 * MINUTE, loadAt + 45 * MINUTE];
      return { pot: `pot ${i + 1}`, loaf: `${i + 1}`, loadAt, lidAt, outAt };
    }),
  });
/** A letter's share of a lane: as measured on a wide tablet, and in bigger words on a tall one. */
const WIDE = 0.0175;
const TALL = 0.0436;

describe('the lanes picture', () => {
  it.each([WIDE, TALL])(
    'tells every call that is to come of a loaf that stands, at any size: %f',
    (letter) => {
      for (let ago = 0; ago < 45; ago += 1) {
        const view = lanesView(plan(1, 4, ago), NOW, READ, { letter, page: 0 });
        const [block] = view.lanes[0]!.blocks;
        const told = block!.marks.filter(({ time }) => time !== null).map(({ time }) => time);
        const lid = READ.hour(NOW + (20 - ago) * MINUTE);
        expect([ago, told.at(-1)]).toEqual([
          ago,
          // In the largest letters a picture may end before the loaf is out.
          block!.cutEnd ? lid : READ.hour(NOW + (45 - ago) * MINUTE),
        ]);
        if (ago <= 20) expect(told).toContain(lid);
        expect(block!.marks.filter(({ number }) => number !== null)).toHaveLength(1);
      }
    },
  );

  it.each([WIDE, TALL])('has no label over another, nor outside its lane: %f', (letter) => {
    for (let page = 0; page < 6; page += 1) {
      const view = lanesView(plan(6, 24), NOW, READ, { letter, page });
      for (const { blocks } of view.lanes) {
        const labels = blocks.flatMap(({ from, marks, number }) => [
          ...(number === null ? [] : [[from, from + (number.length + 1) * letter] as const]),
          ...marks.map(({ x, time, number }) => {
            const letters = time === null ? 1 : time.length + 1.6 + (number?.length ?? -1) + 1;
            return [x - letters * letter, x] as const;
          }),
        ]);
        const inOrder = labels.toSorted(([a], [b]) => a - b);
        for (const [i, [from, to]] of inOrder.entries()) {
          expect(to).toBeLessThanOrEqual(1);
          if (i > 0) expect(from).toBeGreaterThanOrEqual(inOrder[i - 1]![1] - 0.02);
        }
      }
    }
  });

  it('leads by single presses to the last loaf, and says how many more there are until when', () => {
    const of = plan(6, 24);
    const seen = new Set<string>();
    let page = 0;
    for (; page < 20; page += 1) {
      const view = lanesView(of, NOW, READ, { letter: WIDE, page });
      if (page === 0)
        expect(view.lanes[0]!.note).toBe(
          `2 more until ${READ.hour(of.lanes[0]!.turns.at(-1)!.outAt)}`,
        );
      for (const { blocks } of view.lanes)
        for (const { marks, cutEnd } of blocks)
          for (const { time, shape } of marks)
            if (time && shape === 'out' && !cutEnd) seen.add(time);
      if (!view.goesOn) break;
    }
    expect(page).toBeLessThan(4);
    const outs = of.lanes.flatMap(({ turns }) => turns.map(({ outAt }) => READ.hour(outAt)));
    expect([...seen].toSorted()).toEqual([...new Set(outs)].toSorted());
  });

  it('says what has called, what heats, what dropped out, and what takes no more', () => {
    const note = (read: Partial<Read>, loaves = 2, ago = 15) =>
      lanesView(plan(2, loaves, ago), NOW, { ...READ, ...read }, { letter: WIDE, page: 0 })
        .lanes[0]!.note;
    expect(note({})).toBeNull();
    expect(note({ lidOn: () => true })).toBe('lid off now');
    expect(note({}, 2, 45)).toBe('look now');
    expect(note({ dropped: ['pot 1'] })).toBe('out after this loaf');
    const empty = { ...plan(1, 1), lanes: [{ pot: 'pot 1', turns: [] }] };
    const at = (read: Partial<Read>) =>
      lanesView(empty, NOW, { ...READ, ...read }, { letter: WIDE, page: 0 }).lanes[0]!.note;
    expect(at({})).toBe('no more loaves');
    expect(at({ hotAt: () => NOW + 5 * MINUTE })).toBe('hot at 10:05, no more loaves');
  });
});
